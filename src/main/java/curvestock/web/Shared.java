package curvestock.web;

import curvestock.packing.Packers;

/**
 * What all computations share.
 *
 * @param packers that remember what was packed before, for whichever client
 * @param plans that were found before, for whichever client
 * @param pause that holds all searches for a while
 */
record Shared(Packers packers, KnownPlans plans, Pause pause) {}
