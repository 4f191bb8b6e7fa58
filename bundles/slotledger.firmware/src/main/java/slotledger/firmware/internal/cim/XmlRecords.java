package slotledger.firmware.internal.cim;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Finds instances in XML: DMTF's own form ({@code INSTANCE/PROPERTY[@NAME]/VALUE}), and those of Windows shells
 * ({@code Obj/Props/*[@N]} and {@code Object/Property[@Name]}). What is no whole XML gives what came before the damage.
 */
final class XmlRecords {

    private static final List<String> INSTANCES = List.of("INSTANCE", "Obj", "Object");
    private static final List<String> NAMES = List.of("NAME", "Name", "N");
    private static final int DEEPEST = 256;

    private XmlRecords() {
    }

    static List<CimRecord> read(String text) {
        List<CimRecord> records = new ArrayList<>();
        // Always that of Java: another one on the class path may throw otherwise than it promises.
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try {
            read(factory.createXMLStreamReader(new StringReader(text)), records);
        } catch (XMLStreamException damaged) {
            return records;
        }
        return records;
    }

    private static void read(XMLStreamReader xml, List<CimRecord> records) throws XMLStreamException {
        Deque<Map<String, String>> open = new ArrayDeque<>();
        String property = null;
        int depth = 0;
        while (xml.hasNext() && depth < DEEPEST) {
            switch (xml.next()) {
                case XMLStreamConstants.START_ELEMENT -> {
                    depth++;
                    if (INSTANCES.contains(xml.getLocalName())) {
                        open.push(new HashMap<>());
                    }
                    String name = name(xml);
                    property = name != null ? name : xml.getLocalName().equals("VALUE") ? property : null;
                }
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
                    if (property != null && !open.isEmpty() && !xml.isWhiteSpace()) {
                        open.peek().merge(property, xml.getText(), String::concat);
                    }
                }
                case XMLStreamConstants.END_ELEMENT -> {
                    depth--;
                    property = null;
                    if (INSTANCES.contains(xml.getLocalName()) && !open.isEmpty()) {
                        records.add(new CimRecord(open.pop()));
                    }
                }
                default -> { }
            }
        }
    }

    private static String name(XMLStreamReader xml) {
        for (String attribute : NAMES) {
            String name = xml.getAttributeValue(null, attribute);
            if (name != null) {
                return name;
            }
        }
        return null;
    }
}
