/**
 * What the built page may do, and what is said with each of its files. The policy stands in the page
 * itself, so that it holds wherever the folder is served, and in the headers of our own server.
 */

/** Styles come from files alone: React sets single properties, which the policy lets through. */
const POLICY = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "worker-src 'self' blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
];

/** A page cannot forbid its own framing: that directive counts in a header alone. */
const HEADERS = {
  "Content-Security-Policy": [...POLICY, "frame-ancestors 'none'"].join("; "),
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
};

/** Their names hold a hash of their content; every other file is asked for anew. */
const NAMED_BY_CONTENT = /^\/assets\//;
const FOR_EVER = "public, max-age=31536000, immutable";

/** The server states its own cache header at the last moment, so that is where it is put right. */
function keepForEver(response) {
  const writeHead = response.writeHead.bind(response);
  response.writeHead = (status, headers) =>
    writeHead(status, status === 200 ? { ...headers, "Cache-Control": FOR_EVER } : headers);
}

function sendHeaders(request, response, next) {
  for (const [name, value] of Object.entries(HEADERS)) response.setHeader(name, value);
  if (NAMED_BY_CONTENT.test(request.url)) keepForEver(response);
  next();
}

/** Puts the policy into the built page, and the headers on what the server of the build sends. */
export function responseHeaders() {
  return {
    name: "response-headers",
    configurePreviewServer: (server) => {
      server.middlewares.use(sendHeaders);
    },
    transformIndexHtml: (_html, { server }) =>
      server
        ? []
        : [
            {
              tag: "meta",
              attrs: { "http-equiv": "Content-Security-Policy", content: POLICY.join("; ") },
              injectTo: "head-prepend",
            },
          ],
  };
}
