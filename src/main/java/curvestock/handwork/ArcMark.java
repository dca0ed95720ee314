package curvestock.handwork;

import curvestock.geometry.Point;

/**
 * An arc of a piece's outer loop, as it lies on the sheet.
 *
 * @param from index of the corner where it begins
 * @param to index of the corner where it ends
 * @param pivot the middle of its circle
 * @param place what lies under the pivot
 * @param sweep size of the angle swung, in radians
 * @param middle the point half-way along
 */
public record ArcMark(
    int from, int to, Point pivot, PivotPlace place, double radius, double sweep, Point middle) {}
