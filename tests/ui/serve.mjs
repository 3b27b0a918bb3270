// Serves ui/ and tests/ui/gallery/ on loopback under the content security policy of the real thing, for tests only.

import { createServer } from "node:http";
import { readFile } from "node:fs/promises";
import { extname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";
import { ENGLISH } from "./words.mjs";

const HERE = fileURLToPath(new URL(".", import.meta.url));
const CSP = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; connect-src 'self'; font-src 'self'; "
  + "media-src 'self' blob:; base-uri 'none'; form-action 'none'; object-src 'none'; frame-ancestors 'none'";
const TYPES = { ".html": "text/html; charset=utf-8", ".js": "text/javascript; charset=utf-8", ".css": "text/css; charset=utf-8", ".woff2": "font/woff2", ".txt": "text/plain; charset=utf-8" };

/** Starts on a free port. `answer(envelope)` stands in for the core, but the words are its own. Returns { url, close }. */
export async function serve(answer, words = () => ENGLISH) {
  const server = createServer(async (request, reply) => {
    try {
      if (request.method === "POST") {
        const envelope = await body(request);
        const text = JSON.stringify(envelope.request.do === "words" ? { ok: words() } : await answer(envelope));
        return reply.writeHead(200, { "content-type": "application/json" }).end(text);
      }
      const path = new URL(request.url, "http://localhost").pathname;
      if (path === "/favicon.ico") return reply.writeHead(204).end();
      const bytes = await readFile(file(path));
      reply.writeHead(200, { "content-type": TYPES[extname(file(path))] ?? "application/octet-stream", "content-security-policy": CSP }).end(bytes);
    } catch (problem) {
      reply.writeHead(404).end(String(problem));
    }
  });
  await new Promise((ready) => server.listen(0, "127.0.0.1", ready));
  return { url: `http://127.0.0.1:${server.address().port}/`, close: () => server.close() };
}

function file(path) {
  const plain = normalize(path === "/" ? "/index.html" : path);
  return plain.startsWith("/gallery/") ? join(HERE, plain) : join(HERE, "../../ui", plain);
}

async function body(request) {
  const chunks = [];
  for await (const chunk of request) chunks.push(chunk);
  return JSON.parse(Buffer.concat(chunks).toString());
}
