package curvestock.helix.verdict;

import curvestock.helix.clearance.HeightBudget;

/**
 * What a train passes below.
 *
 * @param place which it is
 * @param budget where the height goes there
 */
record Obstacle(Place place, HeightBudget budget) {}
