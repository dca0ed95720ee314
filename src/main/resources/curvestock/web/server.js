// Talks with the program that served this page. Nothing goes anywhere else.

/** The same through reloads of one tab, so that a reload cancels what it had asked. */
function clientOfThisTab() {
  const fresh = [...crypto.getRandomValues(new Uint32Array(4))].join("-");
  try {
    const kept = sessionStorage.getItem("curvestock-client") ?? fresh;
    sessionStorage.setItem("curvestock-client", kept);
    return kept;
  } catch {
    return fresh;
  }
}

const client = clientOfThisTab();

/** An answer that is no: its problems, each with the path of a field, or a message. */
export class Refusal extends Error {
  constructor(status, body) {
    super(body.message ?? body.problems?.map((problem) => problem.message).join("\n") ?? "status " + status);
    this.status = status;
    this.problems = body.problems ?? [];
  }
}

async function ask(method, path, body) {
  let response;
  try {
    response = await fetch(path, {
      method,
      headers: body === undefined ? {} : { "Content-Type": "application/json" },
      body: body === undefined ? undefined : JSON.stringify(body),
    });
  } catch {
    throw new Refusal(0, {
      message: "The program does not answer. Start it again and reload this page: nothing you typed is lost.",
    });
  }
  if (!response.ok) {
    let answer = {};
    try {
      answer = await response.json();
    } catch {
      answer = { message: "The program answered with " + response.status };
    }
    throw new Refusal(response.status, answer);
  }
  return response;
}

const json = async (method, path, body) => (await ask(method, path, body)).json();

export const start = () => json("GET", "/api/start");
export const open = (text) => json("POST", "/api/open", { text });
export const save = (job, original) => json("POST", "/api/save", { job, original });
export const lengths = (units, texts) => json("POST", "/api/lengths", { units, texts });
export const gaps = (job, sheet) => json("POST", "/api/gaps", { job, sheet });
export const work = (job, hand) => json("POST", "/api/work", { client, job, hand });
export const improve = (id, sheets) => json("POST", `/api/work/${id}/improve`, { client, sheets });
export const enough = (id) => ask("POST", `/api/work/${id}/enough`, {});
export const cancel = (id) => ask("DELETE", `/api/work/${id}`);
export const stop = () => ask("POST", "/api/stop", {});

export async function packet(id, hand, text) {
  return (await ask("POST", `/api/work/${id}/packet`, { hand, text })).blob();
}

const NAMES = ["helix", "glance", "fuller", "plan", "looks", "sizes", "progress", "unfit", "improved", "stuck"];
const LAST = ["done", "refused", "failed", "cancelled"];

/** Listens to a computation until it ends; gives a function that stops listening. */
export function listen(id, heard) {
  const source = new EventSource(`/api/work/${id}/events`);
  for (const name of [...NAMES, ...LAST]) {
    source.addEventListener(name, (event) => {
      if (LAST.includes(name)) source.close();
      heard(name, JSON.parse(event.data));
    });
  }
  source.addEventListener("error", () => {
    if (source.readyState === EventSource.CLOSED) {
      heard("failed", { message: "The program no longer answers. Start it again and reload this page." });
    }
  });
  return () => source.close();
}
