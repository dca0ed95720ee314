// Asks the program for the answer to the job as it stands and shows each part as it comes.

import { byId, h, say, show } from "./elements.js";
import * as server from "./server.js";
import { job, setHand, state } from "./state.js";
import { learnFigures, showProblems } from "./questions.js";
import { drawHelix } from "./helix.js";
import { handHolds, onImprove, redraw, showPlan } from "./hand.js";
import { showLooks, showSizes } from "./sizes.js";
import { showTurning } from "./turning.js";
import { showVerdicts } from "./verdicts.js";

let work = null;
let hush = () => {};
let asked = 0;
let plan = null;
let helix = null;
let cutShort = false;
/** The last question on its way: the next one waits for it, so that they reach the program in order. */
let posting = Promise.resolve();

async function post(mine, question) {
  await posting.catch(() => {});
  if (mine !== asked) return null;
  posting = question();
  const answer = await posting;
  return mine === asked ? answer : null;
}

/** The answer in one line, also where the page is too narrow to show it beside the questions. */
function headline(words) {
  byId("cost").textContent = words;
  byId("peek").textContent = words;
}

/** The computation whose answer is shown, if there is one with a plan. */
export const current = () => (plan ? work : null);

/** Whether what is shown is the answer to what is asked: what comes from before is drawn pale. */
function fresh(is) {
  document.body.dataset.fresh = is ? "yes" : "no";
}

function progress(words, share) {
  byId("step").textContent = words;
  const bar = byId("bar");
  bar.hidden = share === null;
  if (share !== null) bar.value = share;
  byId("enough").hidden = share === null;
}

/** Asks anew. What was asked before is cancelled by the program itself. */
export async function ask() {
  const mine = ++asked;
  hush();
  document.body.dataset.state = "asking";
  fresh(false);
  // What is shown still is the former answer, which must not be taken for this one's.
  plan = null;
  delete byId("packet-words").dataset.told;
  offerPacket();
  let started;
  try {
    started = await post(mine, () => server.work(job(), state().hand));
  } catch (refusal) {
    if (mine !== asked) return;
    // A layout by hand that no longer belongs to the job must not stand in its way.
    if (refusal.status === 400 && state().hand) {
      setHand(null);
      return;
    }
    document.body.dataset.state = "wrong";
    headline("Something is to be mended first");
    showProblems(refusal.problems.length ? refusal.problems : [{ path: "", message: refusal.message }]);
    progress("Waiting for the marked questions to be mended. Below is still the former answer.", null);
    const count = Math.max(1, refusal.problems.length);
    say(count === 1 ? "one thing to mend" : count + " things to mend");
    return;
  }
  if (!started) return;
  showProblems([]);
  work = started.id;
  cutShort = false;
  progress("Looking …", 0);
  const told = {};
  hush = server.listen(work, (name, news) => {
    if (mine !== asked) return;
    told[name] = news;
    hear(name, news, told);
  });
}

/** Lets the program go on round the pieces that are pinned. */
async function improve(sheets) {
  const from = current();
  if (!from) return;
  const mine = ++asked;
  hush();
  document.body.dataset.state = "asking";
  try {
    const started = await post(mine, () => server.improve(from, sheets));
    if (!started) return;
    work = started.id;
  } catch (refusal) {
    if (mine !== asked) return;
    document.body.dataset.state = "failed";
    progress(refusal.message, null);
    return;
  }
  progress("Laying anew round the pinned pieces …", 0);
  hush = server.listen(work, (name, news) => {
    if (mine === asked) hear(name, news, { helix, sizes: true });
  });
}

onImprove(improve);

function hear(name, news, told) {
  switch (name) {
    case "helix":
      helix = news;
      learnFigures(news.figures.rows[0]);
      showVerdicts(news);
      drawHelix(news);
      showTurning(news);
      showHelix(true);
      break;
    case "glance":
      fresh(true);
      if (!helix || !told.helix) showHelix(false);
      if (!state().hand) {
        headline(`about ${news.about} ${news.about === 1 ? "sheet" : "sheets"}, ${news.cost}`);
        byId("bound").textContent = news.words;
        byId("gained").textContent = "";
        showPlan({ ...news, stage: undefined });
      }
      break;
    case "fuller":
      // Drawn while there is nothing better; a whole plan is not taken away for one sheet of it.
      byId("gained").textContent = news.words;
      if (!told.plan && !state().hand) showPlan({ ...news, stage: undefined });
      break;
    case "plan":
      fresh(true);
      if (!told.helix) showHelix(false);
      plan = news;
      showAnswer(news);
      break;
    case "improved":
      plan = news;
      setHand({ sheets: news.sheets.map(({ stock, placements }) => ({ stock, placements })) });
      showAnswer(news);
      break;
    case "stuck":
      byId("gained").textContent = news.message;
      say(news.message);
      break;
    case "unfit":
      setHand(null);
      byId("gained").textContent = "Your layout by hand no longer fits this job: " + news.message;
      break;
    case "looks":
      byId("sizes-part").hidden = false;
      if (!told.sizes) showLooks(news);
      break;
    case "sizes":
      byId("sizes-part").hidden = false;
      showSizes(news, work, segment());
      break;
    case "progress":
      progress([news.stage, news.step].filter(Boolean).join(": ") + " …", news.share);
      break;
    case "done":
      document.body.dataset.state = "done";
      progress(cutShort ? "The search was ended early: this is the best so far." : "This is the answer.", null);
      say("answer complete: " + byId("cost").textContent);
      break;
    case "refused":
      fresh(true);
      document.body.dataset.state = "refused";
      progress("It cannot be cut from these sheets.", null);
      headline("Not from these sheets");
      byId("bound").textContent = "";
      show(byId("gained"), news.sentences.map((words) => h("span", { class: "sentence" }, words + " ")));
      show(byId("sheets"));
      break;
    case "cancelled":
      document.body.dataset.state = "failed";
      progress("This search was given up: the same page asked again elsewhere. Reload to ask anew.", null);
      break;
    case "failed":
      document.body.dataset.state = "failed";
      progress(news.message, null);
      break;
    default:
      break;
  }
  if (name === "plan" || name === "done") offerPacket();
}

function segment() {
  const { helix: block } = job();
  return block?.["segment-angle"] ? Number.parseFloat(block["segment-angle"]) : 360 / Number(block?.["segments-per-turn"]);
}

function showHelix(is) {
  for (const id of ["works-part", "helix-part"]) byId(id).hidden = !is;
}

function showAnswer(found) {
  const { answer } = found;
  headline(`${answer.sheets} ${answer.sheets === 1 ? "sheet" : "sheets"}, ${answer.money}`);
  byId("bound").textContent = [answer.sheetsProof, answer.proof].filter(Boolean).join(" ");
  byId("gained").textContent = found.gained;
  if (state().hand && !["hand", "basis", "improved"].includes(found.stage)) {
    byId("gained").append(" Your own layout is kept; “Back to the layout as found” takes the new one.");
  }
  show(byId("buy"), answer.purchase.rows.map(({ words }) =>
    h("tr", {}, h("td", {}, `${words.bought} ×`), h("th", { scope: "row" }, words.sheet), h("td", {}, `${words.length} x ${words.width}`), h("td", {}, words.cost))));
  show(byId("capacities"), answer.perSheet.rows.map(({ words }) =>
    h("li", {}, h("b", {}, `${words.kind}: ${words.found}`), ` to a sheet of ${words.sheet}, ${words.standing} (limit ${words.limit})`)));
  byId("buy-part").hidden = false;
  showPlan(found);
  if (helix) drawHelix(helix);
}

/** The packet can be taken as soon as there is a plan, and no piece laid by hand is in the way. */
export function offerPacket() {
  const button = byId("packet");
  const wrong = state().hand && !handHolds();
  button.disabled = !plan || Boolean(wrong);
  // What was said of a packet stays until something else is asked.
  if (byId("packet-words").dataset.told && !wrong) return;
  byId("packet-words").textContent = wrong
    ? "Some pieces lie too near or over an edge: mend that first."
    : "Drawings for the saw, the schedule, the lists: every drawing is checked before you get it.";
}

/** Ends the search with the best so far. */
export async function enough() {
  if (!work) return;
  cutShort = true;
  progress("Ending the search …", null);
  await server.enough(work);
}

export function handChanged() {
  redraw();
  offerPacket();
}
