// Talks with the program that served this page. Nothing goes anywhere else.

/** Each page by itself, also one that was duplicated: none ends another's search. */
const client = [...crypto.getRandomValues(new Uint32Array(4))].join("-");

/** How long an answer may take before the page says that the program is slow. */
const SLOW_MILLIS = 2500;

/** @type {(link: "ok" | "slow" | "lost") => void} */
let tellLink = () => {};

/** @param {(link: "ok" | "slow" | "lost") => void} tell called when the program answers, is slow, or is gone */
export function onLink(tell) {
  tellLink = tell;
}

/** An answer that is no: its problems, each with the path of a field, or a message. Status 0: no answer at all. */
export class Refusal extends Error {
  /** @param {number} status @param {{message?: string, problems?: {path: string, message: string}[]}} body */
  constructor(status, body) {
    super(body.message ?? body.problems?.map((problem) => problem.message).join("\n") ?? "status " + status);
    this.status = status;
    this.problems = body.problems ?? [];
  }
}

/** @param {string} method @param {string} path @param {unknown} [body] @param {RequestInit} [more] */
async function ask(method, path, body, more = {}) {
  const slow = setTimeout(() => tellLink("slow"), SLOW_MILLIS);
  /** @type {Response} */
  let response;
  try {
    response = await fetch(path, {
      method,
      headers: body === undefined ? {} : { "Content-Type": "application/json" },
      body: body === undefined ? undefined : JSON.stringify(body),
      ...more,
    });
  } catch {
    tellLink("lost");
    throw new Refusal(0, { message: "Curvestock does not respond. What you typed is kept." });
  } finally {
    clearTimeout(slow);
  }
  tellLink("ok");
  if (!response.ok) {
    let answer = {};
    try {
      answer = await response.json();
    } catch {
      answer = { message: "Curvestock answered with error " + response.status };
    }
    throw new Refusal(response.status, answer);
  }
  return response;
}

/**
 * The answer, or a refusal where it tells what is wrong with the job.
 * @param {string} method @param {string} path @param {unknown} [body]
 */
async function json(method, path, body) {
  const response = await ask(method, path, body);
  const answer = await response.json();
  if (answer.problems) throw new Refusal(response.status, answer);
  return answer;
}

/** @typedef {import("./paths.js").Tree} Tree */

/** @returns {Promise<import("./api.js").Start>} */
export const start = () => json("GET", "/api/start");
export const alive = () => ask("GET", "/api/alive");
/** @param {string} text */
export const open = (text) => json("POST", "/api/open", { text });
/** @param {Tree} job @param {string} original @param {any} hand */
export const save = (job, original, hand) => json("POST", "/api/save", { job, original, hand });
/** @param {Tree} job @param {any} sheet */
export const gaps = (job, sheet) => json("POST", "/api/gaps", { job, sheet });
/** @param {Tree} job @param {string} fingerprint @returns {Promise<import("./api.js").Look>} */
export const look = (job, fingerprint) => json("POST", "/api/look", { job, fingerprint });
/** @param {Tree} job @param {string} fingerprint @param {any} hand @param {boolean} further */
export const work = (job, fingerprint, hand, further) => json("POST", "/api/work", { client, job, fingerprint, hand, further });
/** @param {string} id @param {any} sheets */
export const improve = (id, sheets) => json("POST", `/api/work/${id}/improve`, { client, sheets });
/** @param {string} id */
export const enough = (id) => ask("POST", `/api/work/${id}/enough`, {});
/** Also while the page is being closed. @param {string} id */
export const cancel = (id) => ask("DELETE", `/api/work/${id}`, undefined, { keepalive: true });
export const stop = () => ask("POST", "/api/stop", {});

/** @param {string} id @param {any} hand @param {string} text */
export async function packet(id, hand, text) {
  return (await ask("POST", `/api/work/${id}/packet`, { hand, text })).blob();
}

const NAMES = ["decision", "plan", "progress", "unfit", "improved", "stuck"];
const LAST = ["done", "refused", "failed", "cancelled"];

/**
 * Listens to a computation until it ends; gives a function that stops listening.
 * @param {string} id
 * @param {(name: string, news: any) => void} heard
 */
export function listen(id, heard) {
  const source = new EventSource(`/api/work/${id}/events`);
  for (const name of [...NAMES, ...LAST]) {
    source.addEventListener(name, (event) => {
      if (LAST.includes(name)) source.close();
      heard(name, JSON.parse(/** @type {MessageEvent} */ (event).data));
    });
  }
  source.addEventListener("error", () => {
    // The browser tries again by itself while the program may come back to this very search.
    if (source.readyState === EventSource.CLOSED) heard("gone", {});
    else tellLink("lost");
  });
  source.addEventListener("open", () => tellLink("ok"));
  return () => source.close();
}
