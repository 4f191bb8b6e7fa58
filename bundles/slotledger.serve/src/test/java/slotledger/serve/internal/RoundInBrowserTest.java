package slotledger.serve.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.model.machine.AssetTag;
import slotledger.model.work.Job;
import slotledger.model.work.JobEvent;
import slotledger.model.work.JobState;

/** What a technician does, in a real browser at the size of a phone. Pictures lie in target/phones. */
class RoundInBrowserTest {

    private static final Path PICTURES = Path.of("target", "phones");

    @TempDir
    private Path folder;

    private Served served;
    private Browser browser;

    @BeforeEach
    void open() throws Exception {
        browser = Browser.open(folder.resolve("profile"));
        served = new Served(folder.resolve("project"));
        Files.createDirectories(PICTURES);
    }

    @AfterEach
    void close() {
        if (browser != null) {
            browser.close();
        }
        if (served != null) {
            served.close();
        }
    }

    @Test
    void aWholeRoundIsTickedWithTheConnectionLostAndTheServerStartedAgain() throws Exception {
        browser.go(served.address());
        browser.awaitText("h1", "My round");
        pictures("enter");
        browser.type("#round", "R1");
        browser.type("#secret", "0000-0000-0000");
        browser.tapButton("Enter");
        browser.awaitText(".problem", "don't fit");
        browser.run("document.querySelector('#secret').value = ''");
        browser.type("#secret", served.secret("R1"));
        browser.tapButton("Enter");
        browser.awaitText("h1", "Round R1");
        pictures("list");

        browser.type("#tag", "k-101");
        browser.tapButton("Open");
        browser.awaitText("h1", "K-101");
        pictures("machine");
        browser.tap("#step-1");
        browser.awaitText("#sent", "Everything is sent");
        assertEquals(JobState.IN_WORK, job("K-101").state());

        browser.cutOff(true);
        browser.tap("#step-2");
        browser.tap("#step-3");
        browser.awaitText("#sent", "2 entries not yet sent, kept here");
        scrollTo(".steps");
        pictures("offline");
        browser.cutOff(false);
        browser.awaitText("#sent", "Everything is sent");
        assertEquals(Set.of(1, 2, 3), job("K-101").ticked());

        served.stop();
        browser.tap("#step-4");
        browser.type("#serial-0", "QX-17\t");
        browser.awaitText("#sent", "2 entries");
        browser.reload();
        browser.awaitText("h1", "K-101");
        browser.awaitText("#sent", "2 entries not yet sent, kept here");
        assertTrue(browser.run("return document.getElementById('step-4').checked").asBoolean());
        assertEquals("QX-17", browser.run("return document.getElementById('serial-0').value").asText());
        served.startAgain();
        browser.awaitText("#sent", "Everything is sent");
        assertEquals("QX-17", job("K-101").serials().get("DIMM1"));

        browser.tapButton("Done");
        browser.awaitText("dialog", "Every slot holds what was planned?");
        pictures("done");
        browser.tap("dialog button.main");
        Browser.await("K-101 to be done", () -> job("K-101").state() == JobState.DONE);

        browser.tap(".actions a.main");
        browser.awaitText("h1", "K-102");
        browser.tapButton("Otherwise…");
        pictures("otherwise");
        browser.tap("[data-answer=failed]");
        browser.tap("dialog button.main");
        browser.awaitText("dialog .problem", "Say in a few words why.");
        browser.type("#ask-words", "latch of DIMM2 is broken");
        browser.tap("dialog button.main");
        Browser.await("K-102 to have failed", () -> job("K-102").state() == JobState.FAILED);
        assertEquals("latch of DIMM2 is broken", job("K-102").reason());

        browser.tap(".actions a.main");
        browser.awaitText("h1", SmallWork.ODD_TAG);
        browser.tapButton("Start work");
        browser.type("#differs-text", "<b onclick=alert(1)>dust</b>");
        browser.tapButton("Note it");
        browser.awaitText(".notes", "<b onclick=alert(1)>dust</b>");
        scrollTo(".notes");
        pictures("differs");
        browser.tapButton("Otherwise…");
        browser.tap("[data-answer=done-differently]");
        browser.tap("dialog button.main");
        Browser.await("the last to be done", () -> job(SmallWork.ODD_TAG).state() == JobState.DONE_DIFFERENTLY);
        browser.tap(".actions a.main");
        browser.awaitText(".progress", "3 of 3 finished");
        browser.awaitText("#sent", "Everything is sent");
        pictures("finished");

        assertEquals("Slotledger: my round", browser.run("return document.title").asText());
        assertNothingDouble();
    }

    @Test
    void theLinkOfAPassAndTheCodeOfASheetOpenTheirPages() throws Exception {
        URI link = served.server().passes().get(0).entry().orElseThrow().link();
        browser.go(link);
        browser.awaitText("h1", "Round R1");
        assertEquals(served.address().toString(), browser.run("return location.href").asText());
        browser.go(URI.create(served.address() + "#m=K-102"));
        browser.awaitText("h1", "K-102");
        browser.go(URI.create("about:blank"));
        browser.go(URI.create(served.address() + "#m=K-101"));
        browser.awaitText("h1", "K-101");
        assertFalse(browser.has("form #secret"));
        Path passes = folder.resolve("passes.html");
        served.server().writePasses(passes);
        browser.go(passes.toUri());
        browser.awaitText("h1", "Round R1");
        browser.picture(PICTURES.resolve("passes.png"));
        scrollTo("ol");
        browser.picture(PICTURES.resolve("passes-machines.png"));
    }

    @Test
    void nothingIsTooSmallForAFingerUnlabelledOrWiderThanThePhone() throws Exception {
        browser.go(served.server().passes().get(0).entry().orElseThrow().link());
        browser.awaitText("h1", "Round R1");
        for (String tag : new String[] {"", "K-101", SmallWork.ODD_TAG}) {
            browser.run("location.hash = arguments[0] === '' ? '' : 'm=' + encodeURIComponent(arguments[0])", tag);
            browser.awaitText("h1", tag.isEmpty() ? "Round R1" : tag);
            assertEquals("", browser.run(SMALL).asText(), "too small on " + tag);
            assertEquals("", browser.run(UNLABELLED).asText(), "unlabelled on " + tag);
            assertTrue(browser.run("return document.documentElement.scrollWidth <= innerWidth").asBoolean(), tag);
            for (boolean dark : new boolean[] {false, true}) {
                browser.dark(dark);
                assertEquals("", browser.run(PALE).asText(), "pale on " + tag);
            }
        }
    }

    /** WCAG 2.2, 2.5.5: a target has at least 44 CSS pixels, for who wears gloves or works with one thumb. */
    private static final String SMALL = """
            return [...document.querySelectorAll('button, input, select, textarea, summary, a')]
              .map(e => e.type === 'checkbox' ? e.closest('label') : e)
              .filter(e => e.getClientRects().length > 0)
              .filter(e => e.getBoundingClientRect().height < 44 || e.getBoundingClientRect().width < 44)
              .map(e => e.outerHTML).join()""";

    private static final String UNLABELLED = """
            return [...document.querySelectorAll('input, select, textarea')]
              .filter(e => e.labels.length === 0 && !e.hasAttribute('aria-label')).map(e => e.outerHTML).join()""";

    /** WCAG 2.2, 1.4.6: contrast of 7 to 1; 4.5 to 1 for what is large and bold. */
    private static final String PALE = """
            const rgb = c => c.match(/[\\d.]+/g).map(Number);
            const light = c => { const [r, g, b] = rgb(c).map(v => { v /= 255;
              return v <= .03928 ? v / 12.92 : ((v + .055) / 1.055) ** 2.4; });
              return .2126 * r + .7152 * g + .0722 * b; };
            const ground = e => { for (; e; e = e.parentElement) {
              const c = getComputedStyle(e).backgroundColor; if ((rgb(c)[3] ?? 1) > 0) return c; } };
            return [...document.querySelectorAll('body *')]
              .filter(e => [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim() !== ''))
              .filter(e => e.getClientRects().length > 0 && e.namespaceURI.endsWith('xhtml'))
              .filter(e => { const a = light(getComputedStyle(e).color), b = light(ground(e));
                return (Math.max(a, b) + .05) / (Math.min(a, b) + .05) < 4.5; })
              .map(e => e.outerHTML.slice(0, 120)).join()""";

    private Job job(String tag) {
        return served.work.job(folder, new AssetTag(tag));
    }

    private void assertNothingDouble() {
        long different = served.work.recorded.stream().map(JobEvent::id).distinct().count();
        assertEquals(different, served.work.recorded.size());
        assertEquals(11, different, () -> served.work.recorded.stream().map(event -> event.machine() + " "
                + event.what()).collect(Collectors.joining("\n")));
    }

    private void scrollTo(String selector) {
        browser.run("document.querySelector(arguments[0]).scrollIntoView({block: 'center', behavior: 'instant'})",
                selector);
    }

    private void pictures(String name) throws IOException {
        for (boolean dark : new boolean[] {true, false}) {
            browser.dark(dark);
            browser.picture(PICTURES.resolve(name + (dark ? "-dark" : "-light") + ".png"));
        }
    }
}
