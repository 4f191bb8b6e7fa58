package slotledger.bench;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * An inventory of any length as a spreadsheet program stores it: twelve cells a row, shared texts (two of them in no
 * other row), numbers, decimals and dates. The same rows give the same bytes on every machine.
 */
final class LargeWorkbook {

    static final int COLUMNS = 12;

    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String LINKS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
    private static final String TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
    private static final String DECLARATION = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";

    /** Texts that many rows share: sites, rooms, models, contents of slots. */
    private static final int SHARED = 500;

    private LargeWorkbook() {
    }

    /** The workbook with that many rows in a folder, written where it is not there yet. */
    static Path inFolder(Path folder, int rows) throws IOException {
        Path file = folder.resolve("inventory-%d.xlsx".formatted(rows));
        if (!Files.exists(file)) {
            Files.createDirectories(folder);
            Path unfinished = folder.resolve(file.getFileName() + ".part");
            write(unfinished, rows);
            Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE);
        }
        return file;
    }

    private static void write(Path file, int rows) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file));
                ZipOutputStream zip = new ZipOutputStream(out)) {
            Writer text = new OutputStreamWriter(zip, StandardCharsets.UTF_8);
            part(zip, text, "[Content_Types].xml", """
                    <Types xmlns="%1$scontent-types">\
                    <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>\
                    <Default Extension="xml" ContentType="application/xml"/>\
                    <Override PartName="/xl/workbook.xml" ContentType="%2$ssheet.main+xml"/>\
                    <Override PartName="/xl/worksheets/sheet1.xml" ContentType="%2$sworksheet+xml"/>\
                    <Override PartName="/xl/sharedStrings.xml" ContentType="%2$ssharedStrings+xml"/>\
                    <Override PartName="/xl/styles.xml" ContentType="%2$sstyles+xml"/></Types>"""
                    .formatted(PACKAGE, TYPE));
            part(zip, text, "_rels/.rels", """
                    <Relationships xmlns="%srelationships">\
                    <Relationship Id="rId1" Type="%s/officeDocument" Target="xl/workbook.xml"/></Relationships>"""
                    .formatted(PACKAGE, LINKS));
            part(zip, text, "xl/workbook.xml", """
                    <workbook xmlns="%s" xmlns:r="%s"><sheets>\
                    <sheet name="Inventory" sheetId="1" r:id="rId1"/></sheets></workbook>""".formatted(MAIN, LINKS));
            part(zip, text, "xl/_rels/workbook.xml.rels", """
                    <Relationships xmlns="%1$srelationships">\
                    <Relationship Id="rId1" Type="%2$s/worksheet" Target="worksheets/sheet1.xml"/>\
                    <Relationship Id="rId2" Type="%2$s/styles" Target="styles.xml"/>\
                    <Relationship Id="rId3" Type="%2$s/sharedStrings" Target="sharedStrings.xml"/></Relationships>"""
                    .formatted(PACKAGE, LINKS));
            part(zip, text, "xl/styles.xml", """
                    <styleSheet xmlns="%s"><fonts count="1"><font><sz val="11"/><name val="Sans"/></font></fonts>\
                    <fills count="1"><fill><patternFill patternType="none"/></fill></fills>\
                    <borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs>\
                    <cellXfs count="3"><xf numFmtId="0" xfId="0"/><xf numFmtId="2" xfId="0" applyNumberFormat="1"/>\
                    <xf numFmtId="14" xfId="0" applyNumberFormat="1"/></cellXfs></styleSheet>""".formatted(MAIN));
            texts(zip, text, rows);
            sheet(zip, text, rows);
            text.flush();
        }
    }

    private static void part(ZipOutputStream zip, Writer text, String name, String content) throws IOException {
        begin(zip, name);
        text.write(DECLARATION + content);
        text.flush();
    }

    private static void begin(ZipOutputStream zip, String name) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(0);
        zip.putNextEntry(entry);
    }

    private static void texts(ZipOutputStream zip, Writer text, int rows) throws IOException {
        begin(zip, "xl/sharedStrings.xml");
        text.write(DECLARATION + "<sst xmlns=\"" + MAIN + "\" uniqueCount=\"" + (SHARED + 2 * rows) + "\">");
        for (int i = 0; i < SHARED; i++) {
            text.write("<si><t>Room " + i + " of the north wing</t></si>");
        }
        for (int i = 0; i < rows; i++) {
            text.write("<si><t>ASSET-" + i + "</t></si><si><t>SN" + i * 7919L + "X</t></si>");
        }
        text.write("</sst>");
        text.flush();
    }

    private static void sheet(ZipOutputStream zip, Writer text, int rows) throws IOException {
        begin(zip, "xl/worksheets/sheet1.xml");
        text.write(DECLARATION + "<worksheet xmlns=\"" + MAIN + "\" xmlns:r=\"" + LINKS
                + "\"><dimension ref=\"A1:L" + rows + "\"/><sheetFormatPr defaultRowHeight=\"15\"/>"
                + "<cols><col min=\"1\" max=\"12\" width=\"14\"/></cols>"
                + "<sheetData>");
        StringBuilder row = new StringBuilder();
        for (int i = 0; i < rows; i++) {
            row.setLength(0);
            row.append("<row r=\"").append(i + 1).append("\" spans=\"1:12\">");
            cell(row, i, 0, " t=\"s\"", Integer.toString(SHARED + 2 * i));
            cell(row, i, 1, " t=\"s\"", Integer.toString(SHARED + 2 * i + 1));
            for (int column = 2; column < 8; column++) {
                cell(row, i, column, " t=\"s\"", Integer.toString((i * 31 + column * 17) % SHARED));
            }
            cell(row, i, 8, "", Integer.toString(1 << i % 6));
            cell(row, i, 9, "", Integer.toString(i % 97));
            cell(row, i, 10, " s=\"1\"", i % 500 + "." + (i % 89 + 10));
            cell(row, i, 11, " s=\"2\"", Integer.toString(40_000 + i % 5_000));
            text.append(row).append("</row>");
        }
        text.write("</sheetData></worksheet>");
        text.flush();
    }

    private static void cell(StringBuilder row, int number, int column, String attributes, String value) {
        row.append("<c r=\"").append((char) ('A' + column)).append(number + 1).append('"').append(attributes)
                .append("><v>").append(value).append("</v></c>");
    }
}
