package curvestock.helix.build;

import curvestock.units.Angle;
import curvestock.units.Length;

/**
 * One piece of the assembly schedule.
 *
 * @param piece number, kind, joints and stations
 * @param turn the turn on which it begins, from 1
 * @param bearingFrom direction from the centre at its lower joint or ring end
 * @param bearingTo the same at its upper one
 * @param undersideFrom of the piece's own layer above the base, at its lower joint or ring end
 * @param undersideTo the same at its upper one
 * @param railFrom rail tops above the base, at its lower joint or ring end
 * @param railTo the same at its upper one
 */
public record ScheduleRow(
    BedPiece piece,
    int turn,
    Angle bearingFrom,
    Angle bearingTo,
    Length undersideFrom,
    Length undersideTo,
    Length railFrom,
    Length railTo) {}
