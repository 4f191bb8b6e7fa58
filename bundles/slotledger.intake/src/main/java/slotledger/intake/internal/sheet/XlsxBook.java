package slotledger.intake.internal.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a workbook's main part says: its sheets in the order a person sees them, and where the rest is.
 *
 * @param date1904 whether days count from 1904-01-01
 * @param sheets   only those with cells, not charts or macros
 * @param strings  part with shared strings; empty where there is none
 * @param styles   part with number formats; empty where there is none
 */
record XlsxBook(boolean date1904, List<Sheet> sheets, String strings, String styles) {

    XlsxBook {
        sheets = List.copyOf(sheets);
    }

    /**
     * One sheet.
     *
     * @param name   as its tab shows it
     * @param hidden whether a person does not see it
     * @param part   where its cells are
     */
    record Sheet(String name, boolean hidden, String part) {}

    /** One pointer from a part to another; the type is the last word of its address, alike in both namespaces. */
    private record Relationship(String type, String part) {}

    static XlsxBook of(ZipParts parts, Meter meter) throws IOException {
        String main = "xl/workbook.xml";
        for (Relationship link : links(parts, "", meter).values()) {
            if (link.type.equals("officeDocument")) {
                main = link.part;
            }
        }
        Map<String, Relationship> links = links(parts, main, meter);
        boolean date1904 = false;
        List<Sheet> sheets = new ArrayList<>();
        try (PartXml xml = new PartXml(parts.open(main, meter))) {
            xml.nextChild();
            if (!xml.name().equals("workbook")) {
                throw BadSheetException.damaged("The main part of the file is no workbook but a %s."
                        .formatted(xml.name()), null);
            }
            while (xml.nextChild()) {
                switch (xml.name()) {
                    case "workbookPr" -> {
                        date1904 = xml.flag("date1904");
                        xml.skip();
                    }
                    case "sheets" -> readSheets(xml, links, sheets);
                    default -> xml.skip();
                }
            }
            xml.finish();
        }
        return new XlsxBook(date1904, sheets, ofType(links, "sharedStrings"), ofType(links, "styles"));
    }

    private static void readSheets(PartXml xml, Map<String, Relationship> links, List<Sheet> sheets)
            throws IOException {
        while (xml.nextChild()) {
            String name = xml.attribute("name");
            Relationship link = links.get(xml.relationship());
            if (name == null || link == null) {
                throw BadSheetException.damaged("The workbook lists a sheet (%s) but not where its cells are."
                        .formatted(name), null);
            }
            if (link.type.equals("worksheet")) {
                String state = xml.attribute("state");
                sheets.add(new Sheet(TextCell.unescaped(name), state != null && !state.equals("visible"), link.part));
            }
            xml.skip();
        }
    }

    private static String ofType(Map<String, Relationship> links, String type) {
        return links.values().stream().filter(link -> link.type.equals(type)).map(Relationship::part)
                .findFirst().orElse("");
    }

    private static Map<String, Relationship> links(ZipParts parts, String part, Meter meter) throws IOException {
        int slash = part.lastIndexOf('/') + 1;
        String name = part.substring(0, slash) + "_rels/" + part.substring(slash) + ".rels";
        Map<String, Relationship> links = new HashMap<>();
        if (!parts.has(name)) {
            return links;
        }
        try (PartXml xml = new PartXml(parts.open(name, meter))) {
            xml.nextChild();
            while (xml.nextChild()) {
                String type = xml.attribute("Type");
                String target = xml.attribute("Target");
                if (type != null && target != null && !"External".equals(xml.attribute("TargetMode"))) {
                    String shortType = type.substring(type.lastIndexOf('/') + 1);
                    links.put(xml.attribute("Id"), new Relationship(shortType, ZipParts.resolve(part, target)));
                }
                xml.skip();
            }
            xml.finish();
        }
        return links;
    }
}
