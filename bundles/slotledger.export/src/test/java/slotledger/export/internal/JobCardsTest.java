package slotledger.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import slotledger.export.PlanBook;
import slotledger.export.internal.card.DefaultJobCards;
import slotledger.export.internal.fixture.CellarPlan;
import slotledger.export.internal.fixture.SchoolPlan;
import slotledger.export.internal.job.JobSheet;
import slotledger.export.internal.job.JobSheets;
import slotledger.model.work.JobCard;

class JobCardsTest {

    private static final List<PlanBook> BOOKS = List.of(SchoolPlan.book(), CellarPlan.book());

    @Test
    void everyOpenedMachineHasACardInTheOrderOfWork() {
        for (PlanBook book : BOOKS) {
            assertEquals(book.plan().work().stream().map(plan -> plan.machine().tag()).toList(),
                    new DefaultJobCards().of(book, 3).stream().map(JobCard::machine).toList());
        }
    }

    @Test
    void aCardSaysWhatTheJobSheetSays() {
        for (PlanBook book : BOOKS) {
            List<JobCard> cards = new DefaultJobCards().of(book, 3);
            for (JobSheet sheet : new JobSheets(book).all()) {
                JobCard card = cards.stream().filter(each -> each.machine().equals(sheet.machine().tag())).findFirst()
                        .orElseThrow();
                assertEquals(3, card.plan());
                assertEquals(sheet.steps().size(), card.steps().size());
                assertEquals(sheet.received().size(), card.receiving().size());
                assertEquals(sheet.before().size(), card.before().words().size());
                assertTrue(card.cautions().containsAll(sheet.notes()), card.cautions().toString());
                assertFalse(card.summary().isBlank());
            }
        }
    }

    @Test
    void everyDrawingIsWellFormedAndNothingInItRunsOrLeavesThePage() throws Exception {
        for (PlanBook book : BOOKS) {
            for (JobCard card : new DefaultJobCards().of(book, 1)) {
                for (JobCard.Picture picture : List.of(card.before(), card.after())) {
                    NodeList all = parsed(picture.svg()).getElementsByTagName("*");
                    for (int i = 0; i < all.getLength(); i++) {
                        Element element = (Element) all.item(i);
                        assertTrue(List.of("svg", "g", "rect", "text").contains(element.getTagName()),
                                element.getTagName());
                        assertFalse(element.hasAttribute("style") || element.hasAttribute("href"), picture.svg());
                    }
                }
            }
        }
    }

    @Test
    void aDrawingShowsTheLabelOfEverySlotAndStaysWithinItsFrame() throws Exception {
        for (JobCard card : new DefaultJobCards().of(SchoolPlan.book(), 1)) {
            Document drawing = parsed(card.after().svg());
            String[] frame = drawing.getDocumentElement().getAttribute("viewBox").split(" ");
            NodeList slots = drawing.getElementsByTagName("rect");
            assertEquals(card.after().words().size(), slots.getLength());
            for (int i = 0; i < slots.getLength(); i++) {
                Element slot = (Element) slots.item(i);
                assertTrue(number(slot, "x") + number(slot, "width") <= Integer.parseInt(frame[2]), card.after().svg());
                assertTrue(number(slot, "y") + number(slot, "height") <= Integer.parseInt(frame[3]),
                        card.after().svg());
            }
        }
    }

    private static int number(Element element, String attribute) {
        return Integer.parseInt(element.getAttribute(attribute));
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg)));
    }
}
