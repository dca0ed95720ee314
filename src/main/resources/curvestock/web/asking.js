// Asks the program about the job as it stands: at once what regular patterns say, a moment later for
// plans. One question of each kind is under way; the newest waits.

import * as server from "./server.js";
import { fingerprint } from "./paths.js";
import { answer, onChange, put, say, setHand, state, ui } from "./store.js";
import { asked } from "./typical.js";
import { counted } from "./elements.js";

const REST_MILLIS = 250;
const AGAIN_MILLIS = 1000;
const COMPLAIN_MILLIS = 700;

let looking = false;
let lookAgain = false;
let restTimer = 0;
let complainTimer = 0;
let againTimer = 0;
let hush = () => {};
/** The last search asked for: the next one waits for its answer, so that they reach the program in order. */
/** @type {Promise<any>} */
let posting = Promise.resolve();
let question = 0;
let announced = "";

/** Whether that part answers the job as it stands. @param {{fingerprint: string} | null | undefined} part */
export const fresh = (part) => Boolean(part) && part?.fingerprint === state().answer.fingerprint;

/** Begins to follow the job. */
export function followJob() {
  onChange((now, before) => {
    if (now.doc.job !== before.doc.job || now.doc.assume !== before.doc.assume || now.usual !== before.usual) asks();
  });
  server.onLink((link) => {
    const before = state().answer.link;
    if (link !== before) answer({ link });
    if (link === "lost") tryAgain();
  });
  addEventListener("pagehide", () => {
    const { work, phase } = state().answer;
    if (work && phase === "searching") server.cancel(work).catch(() => {});
  });
  // A page that comes back from the browser's store asks anew what it had cancelled.
  addEventListener("pageshow", (event) => {
    if (event.persisted) asks();
  });
}

/** The job is another: everything shown is of a former one until its answer comes. */
export function asks() {
  const { usual } = state();
  if (!usual) return;
  hush();
  hush = () => {};
  question++;
  // What is searched for a former job only takes time from this one.
  const { work, phase } = state().answer;
  if (work && phase === "searching") server.cancel(work).catch(() => {});
  const job = asked(state());
  const print = fingerprint(job);
  clearTimeout(complainTimer);
  answer({ fingerprint: print, phase: "looking", refusal: [], problems: state().answer.problems, progress: { words: "", share: null } });
  if (state().ui.packet && !state().ui.packing) ui({ packet: "" });
  look();
  clearTimeout(restTimer);
  restTimer = window.setTimeout(() => search(false), REST_MILLIS);
}

async function look() {
  if (looking) {
    lookAgain = true;
    return;
  }
  looking = true;
  const print = state().answer.fingerprint;
  try {
    const found = await server.look(asked(state()), print);
    // Of a job that is former already it is shown all the same, as such: so a slider moves the cards.
    const { decision } = state().answer;
    const newer = found.decision && !(decision?.fingerprint === print && decision.complete);
    answer({ look: found, ...(newer || !found.decision ? { decision: found.decision ?? null } : {}), ...(fresh(found) ? { problems: [] } : {}) });
  } catch (refusal) {
    if (print === state().answer.fingerprint) refused(/** @type {server.Refusal} */ (refusal));
  } finally {
    looking = false;
    if (lookAgain) {
      lookAgain = false;
      look();
    }
  }
}

/** Problems are told when typing rests: half a number is no mistake yet. @param {server.Refusal} refusal */
function refused(refusal) {
  if (refusal.status === 0) return;
  const problems = refusal.problems.length ? refusal.problems : [{ path: "", message: refusal.message }];
  clearTimeout(complainTimer);
  complainTimer = window.setTimeout(() => complain(problems), state().ui.draft ? COMPLAIN_MILLIS : 0);
}

/** @param {{path: string, message: string}[]} problems */
function complain(problems) {
  clearTimeout(restTimer);
  answer({ phase: "wrong", problems });
  say(`${counted(problems.length, "field")} to fix: ${problems[0].message}`);
}

/**
 * Asks for plans. What was asked before is cancelled by the program itself.
 * @param {boolean} further whether to go on where a search has ended
 */
export async function search(further) {
  const mine = ++question;
  hush();
  const { doc, answer: { fingerprint: print } } = state();
  try {
    await posting.catch(() => {});
    if (mine !== question) return;
    posting = server.work(asked(state()), print, doc.hand, further);
    const started = await posting;
    if (mine === question) listen(started.id, mine);
  } catch (error) {
    if (mine !== question) return;
    const refusal = /** @type {server.Refusal} */ (error);
    if (refusal.status === 400 && doc.hand) {
      // A layout by hand that no longer belongs to the job must not stand in its way.
      setHand(null);
      search(further);
    } else if (refusal.status === 503) {
      answer({ progress: { words: "Curvestock is busy with other pages; trying again.", share: null } });
      again(5 * AGAIN_MILLIS);
    } else refused(refusal);
  }
}

/** @param {string} id @param {number} mine */
function listen(id, mine) {
  const words = state().answer.plan && fresh(state().answer.plan) ? state().answer.progress.words : "First layout";
  answer({ work: id, phase: "searching", progress: { words, share: null }, problems: [] });
  hush = server.listen(id, (name, news) => {
    if (mine === question) hear(name, news);
  });
}

/** Goes on round the pieces that are pinned. @param {any[]} sheets */
export async function improve(sheets) {
  const { work } = state().answer;
  if (!work) return;
  const mine = ++question;
  hush();
  ui({ note: "" });
  try {
    posting = server.improve(work, sheets);
    const started = await posting;
    if (mine !== question) return;
    listen(started.id, mine);
    answer({ progress: { words: "Rearranging around the pinned pieces", share: null } });
  } catch (refusal) {
    if (mine === question) ui({ note: /** @type {Error} */ (refusal).message });
  }
}

/** @param {string} name @param {any} news */
function hear(name, news) {
  switch (name) {
    case "decision":
      answer({ decision: news });
      break;
    case "plan":
      answer({ plan: news, refusal: [] });
      announce(news);
      break;
    case "improved":
      answer({ plan: news });
      setHand({ sheets: news.sheets.map((/** @type {any} */ sheet) => ({ stock: sheet.stock, placements: sheet.placements })) });
      ui({ note: news.gained, spoken: news.gained });
      break;
    case "stuck":
      ui({ note: news.message, spoken: news.message });
      break;
    case "unfit":
      setHand(null);
      ui({ note: "Your own layout no longer fits this job: " + news.message });
      break;
    case "progress":
      answer({ progress: { words: news.stage, share: news.share } });
      break;
    case "done":
      answer({ phase: state().answer.phase === "stopped" ? "stopped" : "done", progress: { words: "", share: null } });
      if (state().answer.plan) say("Done: " + headline(state().answer.plan));
      break;
    case "refused":
      answer({ phase: "refused", plan: null, refusal: news.sentences, progress: { words: "", share: null } });
      say("Cannot be cut from these sheets: " + news.sentences.join(" "));
      break;
    case "failed":
      answer({ phase: "failed", progress: { words: "", share: null }, refusal: ["Curvestock has a bug: " + news.message] });
      break;
    default:
      // Cancelled, or forgotten by a program that was started anew: asked again by itself.
      again(AGAIN_MILLIS);
  }
}

/** @param {any} plan */
export const headline = (plan) => `${counted(plan.answer.sheets, "sheet")}, ${plan.answer.money}`;

/** @param {any} plan */
function announce(plan) {
  const words = headline(plan);
  if (words !== announced || plan.stage === "first") say((plan.stage === "first" ? "First answer: " : "Plan: ") + words);
  announced = words;
}

/** Ends the search with the best so far. */
export async function enough() {
  const { work } = state().answer;
  if (!work) return;
  answer({ phase: "stopped", progress: { words: "", share: null } });
  await server.enough(work).catch(() => {});
}

/** @param {number} millis */
function again(millis) {
  clearTimeout(againTimer);
  againTimer = window.setTimeout(asks, millis);
}

/** Asks whether the program is there until it answers; then asks it everything anew. */
function tryAgain() {
  clearTimeout(againTimer);
  againTimer = window.setTimeout(async () => {
    try {
      await server.alive();
      put({ answer: { ...state().answer, link: "ok" } });
      asks();
    } catch {
      tryAgain();
    }
  }, AGAIN_MILLIS);
}
