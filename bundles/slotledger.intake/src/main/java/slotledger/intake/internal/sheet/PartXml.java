package slotledger.intake.internal.sheet;

import com.fasterxml.aalto.UncheckedStreamException;
import com.fasterxml.aalto.stax.InputFactoryImpl;
import java.io.IOException;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import org.codehaus.stax2.XMLStreamReader2;

/**
 * Walks the elements of one part of a workbook, by their local names so that the transitional and the strict
 * namespaces and any prefix are alike. Document types, and with them entities of any kind, are refused.
 */
final class PartXml implements AutoCloseable {

    private static final int DEEPEST = 256;

    private final GuardedStream stream;
    private final XMLStreamReader2 xml;
    private int depth;

    PartXml(GuardedStream stream) throws IOException {
        this.stream = stream;
        // A factory remembers every name it met, so each part has its own.
        XMLInputFactory factory = new InputFactoryImpl();
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, false);
        try {
            xml = (XMLStreamReader2) factory.createXMLStreamReader(stream);
        } catch (XMLStreamException broken) {
            throw translated(broken);
        }
    }

    /** Goes to the next element inside the current one; false, and the current one is left, where there is none. */
    boolean nextChild() throws IOException {
        while (true) {
            switch (next()) {
                case XMLStreamConstants.START_ELEMENT:
                    return true;
                case XMLStreamConstants.END_ELEMENT, XMLStreamConstants.END_DOCUMENT:
                    return false;
                default:
                    break;
            }
        }
    }

    /** Goes to the end of the part, so that whatever is damaged there is noticed. */
    void finish() throws IOException {
        while (next() != XMLStreamConstants.END_DOCUMENT) {
            continue;
        }
    }

    /** Leaves the current element with all that is in it. */
    void skip() throws IOException {
        for (int open = 1; open > 0;) {
            int event = next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                open++;
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                open--;
            }
        }
    }

    /** Adds the text of the current element, without that of elements in it, and leaves it. */
    void text(Letters target) throws IOException {
        while (true) {
            switch (next()) {
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE:
                    add(target);
                    break;
                case XMLStreamConstants.START_ELEMENT:
                    skip();
                    break;
                case XMLStreamConstants.END_ELEMENT, XMLStreamConstants.END_DOCUMENT:
                    return;
                default:
                    break;
            }
        }
    }

    private void add(Letters target) throws IOException {
        try {
            target.append(xml.getTextCharacters(), xml.getTextStart(), xml.getTextLength());
        } catch (UncheckedStreamException broken) {
            throw translated(broken);
        }
        if (target.length() > TextCell.MOST_CHARACTERS) {
            throw TextCell.tooLong();
        }
    }

    String name() {
        return xml.getLocalName();
    }

    int attributes() {
        return xml.getAttributeCount();
    }

    String attributeName(int index) {
        return xml.getAttributeLocalName(index);
    }

    String attributeValue(int index) {
        return xml.getAttributeValue(index);
    }

    /** An attribute's value without a string. */
    void attributeValue(int index, Letters target) throws IOException {
        try {
            xml.getAttributeAs(index, target);
        } catch (XMLStreamException broken) {
            throw translated(broken);
        }
    }

    /** An attribute of the current element that is in no namespace; null where there is none. */
    String attribute(String localName) {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            if (xml.getAttributeLocalName(i).equals(localName) && isEmpty(xml.getAttributeNamespace(i))) {
                return xml.getAttributeValue(i);
            }
        }
        return null;
    }

    /** A relationship's id, in the transitional or the strict namespace; null where there is none. */
    String relationship() {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            if (xml.getAttributeLocalName(i).equals("id") && !isEmpty(xml.getAttributeNamespace(i))) {
                return xml.getAttributeValue(i);
            }
        }
        return null;
    }

    /** A yes-or-no attribute as XML Schema writes it; no where it is missing. */
    boolean flag(String localName) {
        return isTrue(attribute(localName));
    }

    static boolean isTrue(String value) {
        return value != null && (value.equals("1") || value.equals("true") || value.equals("on"));
    }

    private static boolean isEmpty(String text) {
        return text == null || text.isEmpty();
    }

    private int next() throws IOException {
        try {
            int event = xml.next();
            stream.stepDone();
            switch (event) {
                case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE:
                    throw new BadSheetException("workbook-hostile",
                            "The workbook declares a document type or entities, which no spreadsheet program writes.",
                            "a workbook saved by a spreadsheet program",
                            "Ask where the file is from; don't open it elsewhere before you know.");
                case XMLStreamConstants.START_ELEMENT:
                    depth++;
                    if (depth > DEEPEST) {
                        throw BadSheetException.damaged("The workbook nests elements too deeply.", null);
                    }
                    break;
                case XMLStreamConstants.END_ELEMENT:
                    depth--;
                    break;
                default:
                    break;
            }
            return event;
        } catch (XMLStreamException | UncheckedStreamException broken) {
            throw translated(broken);
        }
    }

    /** The parser wraps what the stream throws; what is inside says more. */
    private static IOException translated(Exception broken) {
        for (Throwable inner = broken; inner != null; inner = nested(inner)) {
            if (inner instanceof IOException io) {
                return io;
            }
        }
        return BadSheetException.damaged("The workbook's XML is damaged: %s."
                .formatted(broken.getMessage().lines().findFirst().orElse("")), broken);
    }

    private static Throwable nested(Throwable outer) {
        return outer instanceof XMLStreamException xml && xml.getNestedException() != null
                ? xml.getNestedException() : outer.getCause();
    }

    @Override
    public void close() throws IOException {
        stream.close();
    }
}
