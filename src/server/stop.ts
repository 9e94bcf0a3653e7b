import type { Server } from "node:http";

const patience_ms = 5_000;

/**
 * Stops taking connections, lets requests under way finish, and closes what is left after 5 s.
 * @returns when the server is closed
 */
export function stopGracefully(server: Server): Promise<void> {
  return new Promise((resolve) => {
    const hurry = setTimeout(() => server.closeAllConnections(), patience_ms);
    server.close(() => {
      clearTimeout(hurry);
      resolve();
    });
    server.closeIdleConnections();
  });
}
