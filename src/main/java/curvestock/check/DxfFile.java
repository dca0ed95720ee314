package curvestock.check;

import java.util.List;

/**
 * What a DXF file holds that can be judged, in millimetres.
 *
 * @param form how its outlines differ from the finished size, as it says
 * @param sheet the lines of the layer of the sheet, in the order of the file
 * @param cuts the lines of the layer of cuts
 * @param oddities entities of the layer of cuts that are neither lines nor arcs
 */
record DxfFile(CutForm form, List<Chain> sheet, List<Chain> cuts, List<Finding> oddities) {

  DxfFile {
    sheet = List.copyOf(sheet);
    cuts = List.copyOf(cuts);
    oddities = List.copyOf(oddities);
  }
}
