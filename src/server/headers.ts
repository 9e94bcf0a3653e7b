import type { MiddlewareHandler } from "hono";
import { secureHeaders } from "hono/secure-headers";

const none = ["'none'"];
const self = ["'self'"];

/** Everything the page needs comes from here; nothing else is loaded, framed, posted to or asked of the device. */
export function securityHeaders(): MiddlewareHandler {
  return secureHeaders({
    contentSecurityPolicy: {
      defaultSrc: none,
      scriptSrc: self,
      styleSrc: self,
      fontSrc: self,
      imgSrc: ["'self'", "data:", "blob:"],
      connectSrc: self,
      workerSrc: self,
      manifestSrc: self,
      baseUri: none,
      formAction: none,
      frameAncestors: none,
    },
    permissionsPolicy: {
      // how a phone is held, for angles up to walls and trees
      accelerometer: ["self"],
      camera: [],
      displayCapture: [],
      // the place of a garden, where somebody asks for it
      geolocation: ["self"],
      gyroscope: ["self"],
      magnetometer: [],
      microphone: [],
      midi: [],
      payment: [],
      usb: [],
    },
    crossOriginEmbedderPolicy: "require-corp",
    crossOriginOpenerPolicy: "same-origin",
    crossOriginResourcePolicy: "same-origin",
    referrerPolicy: "no-referrer",
    xFrameOptions: "DENY",
    strictTransportSecurity: false,
  });
}
