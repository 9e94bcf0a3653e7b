import type { Server } from "node:http";

const patience_ms = 5_000;
const look_ms = 50;

/**
 * Stops taking connections, lets requests under way finish, closes connections as they fall idle, and what
 * is left after 5 s.
 * @returns when the server is closed
 */
export function stopGracefully(server: Server): Promise<void> {
  return new Promise((resolve) => {
    const idle = setInterval(() => server.closeIdleConnections(), look_ms);
    const hurry = setTimeout(() => server.closeAllConnections(), patience_ms);
    server.close(() => {
      clearInterval(idle);
      clearTimeout(hurry);
      resolve();
    });
  });
}
