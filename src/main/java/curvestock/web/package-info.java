/**
 * The page in the browser: a small server that hands out the page's files and a JSON API, a thin
 * skin over {@link curvestock.app.Workshop}.
 *
 * <p>Comes in: jobs as JSON trees of texts, the same fields as a job file's. Goes out: answers as
 * JSON, computations as server-sent events, packets as zip. Nothing a client sends names a file of
 * this machine. Start reading at {@link curvestock.web.PageServer}, then {@code Api} and {@code
 * Work}; {@code Guard} says who may ask at all.
 */
package curvestock.web;
