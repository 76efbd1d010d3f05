/** Whether what answers at a port of this machine is Titrebook: http or https, trusted or not. */
import { get as overHttp } from "node:http";
import { get as overHttps } from "node:https";

const mostMilliseconds = 1500;

const namesUs = (secure: boolean, port: number): Promise<boolean> =>
  new Promise((resolve) => {
    const path = secure ? "/taskpane.html" : "/";
    const options = { host: "127.0.0.1", port, path, timeout: mostMilliseconds, agent: false };
    const request = secure
      ? overHttps({ ...options, rejectUnauthorized: false })
      : overHttp(options);
    request.on("response", (response) => {
      let body = "";
      response.setEncoding("utf8");
      response.on("data", (part: string) => {
        body += part;
        if (body.length > 20_000) response.destroy();
      });
      response.on("close", () => {
        resolve(/<title>Titrebook/.test(body));
      });
    });
    request.on("timeout", () => request.destroy());
    request.on("error", () => {
      resolve(false);
    });
  });

export const isOurs = async (port: number): Promise<boolean> =>
  (await namesUs(false, port)) || (await namesUs(true, port));
