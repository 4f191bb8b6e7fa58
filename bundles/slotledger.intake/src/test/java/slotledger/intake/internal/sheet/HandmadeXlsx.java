package slotledger.intake.internal.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A workbook written letter by letter, to hold what no library would write. */
final class HandmadeXlsx {

    static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    static final String LINKS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    static final String STRICT_MAIN = "http://purl.oclc.org/ooxml/spreadsheetml/main";
    static final String STRICT_LINKS = "http://purl.oclc.org/ooxml/officeDocument/relationships";

    private final Map<String, byte[]> parts = new LinkedHashMap<>();

    /** A workbook with one sheet named Data and the usual other parts. */
    static HandmadeXlsx ofSheet(String sheetXml) {
        return new HandmadeXlsx(MAIN, LINKS).part("xl/worksheets/sheet1.xml", sheetXml);
    }

    static HandmadeXlsx ofRows(String rowsXml) {
        return ofSheet("<worksheet xmlns=\"%s\"><sheetData>%s</sheetData></worksheet>".formatted(MAIN, rowsXml));
    }

    HandmadeXlsx(String main, String links) {
        part("[Content_Types].xml", """
                <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>""");
        part("_rels/.rels", """
                <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">\
                <Relationship Id="r1" Type="%s/officeDocument" Target="xl/workbook.xml"/></Relationships>"""
                .formatted(links));
        part("xl/workbook.xml", """
                <workbook xmlns="%s" xmlns:r="%s"><sheets>\
                <sheet name="Data" sheetId="1" r:id="r1"/></sheets></workbook>"""
                .formatted(main, links));
        part("xl/_rels/workbook.xml.rels", """
                <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">\
                <Relationship Id="r1" Type="%1$s/worksheet" Target="worksheets/sheet1.xml"/>\
                <Relationship Id="r2" Type="%1$s/sharedStrings" Target="sharedStrings.xml"/>\
                <Relationship Id="r3" Type="%1$s/styles" Target="styles.xml"/></Relationships>""".formatted(links));
        strings("");
        styles("");
    }

    HandmadeXlsx part(String name, String content) {
        return part(name, content.getBytes(StandardCharsets.UTF_8));
    }

    HandmadeXlsx part(String name, byte[] content) {
        parts.put(name, content);
        return this;
    }

    byte[] part(String name) {
        return parts.get(name).clone();
    }

    HandmadeXlsx without(String name) {
        parts.remove(name);
        return this;
    }

    HandmadeXlsx strings(String items) {
        return part("xl/sharedStrings.xml", "<sst xmlns=\"%s\">%s</sst>".formatted(MAIN, items));
    }

    /** Number formats, one a style, beginning with style 0. */
    HandmadeXlsx styles(String... formats) {
        StringBuilder codes = new StringBuilder();
        StringBuilder styles = new StringBuilder();
        for (int i = 0; i < formats.length; i++) {
            codes.append("<numFmt numFmtId=\"%d\" formatCode=\"%s\"/>"
                    .formatted(164 + i, formats[i].replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;")));
            styles.append("<xf numFmtId=\"%d\"/>".formatted(164 + i));
        }
        return part("xl/styles.xml", """
                <styleSheet xmlns="%s"><numFmts>%s</numFmts><cellStyleXfs><xf numFmtId="14"/></cellStyleXfs>\
                <cellXfs>%s</cellXfs></styleSheet>""".formatted(MAIN, codes, styles));
    }

    Path write(Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file); ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
        }
        return file;
    }
}
