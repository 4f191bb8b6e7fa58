package slotledger.serve.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.model.machine.AssetTag;
import slotledger.model.work.Job;
import slotledger.model.work.JobEvent;
import slotledger.model.work.JobState;
import slotledger.serve.Pass;
import slotledger.serve.ServeException;
import slotledger.serve.ServeRequest;
import slotledger.serve.internal.http.Limits;

class PhoneServiceTest {

    @TempDir
    private Path project;

    private final MovingClock clock = new MovingClock(Instant.now());
    private Served served;

    @BeforeEach
    void start() throws ServeException {
        served = new Served(project, Limits.USUAL, clock);
    }

    @AfterEach
    void stop() {
        served.close();
    }

    @Test
    void aTechnicianSeesTheWholeRoundAndNoOther() throws Exception {
        Phone phone = served.entered("R1");
        JsonNode round = Phone.JSON.readTree(phone.round().body());
        assertEquals("R1", round.path("id").asText());
        assertEquals("Ada Miles", round.path("technician").asText());
        assertEquals(List.of("K-101", "K-102", SmallWork.ODD_TAG), round.path("machines").findValuesAsText("machine"));
        assertEquals(4, round.at("/machines/0/card/steps").size());
        assertFalse(phone.round().body().contains("K-201"));
    }

    @Test
    void roundAndSecretMayBeTypedInSmallLettersWithoutHyphens() throws Exception {
        String typed = served.secret("R1").toLowerCase().replace("-", "").replace('0', 'o').replace('1', 'l');
        assertEquals(200, served.phone().enter(" r1 ", typed).statusCode());
        assertEquals(403, served.phone().enter("R1", "7KQM-03WD-XR5T").statusCode());
        assertEquals(403, served.phone().enter("R2", served.secret("R1")).statusCode());
    }

    @Test
    void whatIsSaidIsRecordedUnderTheTechniciansName() throws Exception {
        Phone phone = served.entered("R1");
        JsonNode receipt = phone.send(
                Phone.event("K-101", "became").put("state", "in-work").put("reason", ""),
                Phone.event("K-101", "ticked").put("step", 2).put("done", true),
                Phone.event("K-101", "serial").put("slot", "DIMM1").put("serial", " QX-17 "),
                Phone.event("K-101", "deviated").put("slot", "").put("text", "fan is loud\u0000"),
                Phone.event("K-102", "became").put("state", "failed").put("reason", "latch broken"));
        assertEquals(5, receipt.path("kept").size());
        assertEquals(0, receipt.path("refused").size());
        Job first = served.work.job(project, new AssetTag("K-101"));
        assertEquals(JobState.IN_WORK, first.state());
        assertEquals(Set.of(2), first.ticked());
        assertEquals("QX-17", first.serials().get("DIMM1"));
        assertEquals("fan is loud", first.deviations().get(0).text());
        assertEquals("latch broken", served.work.job(project, new AssetTag("K-102")).reason());
        assertTrue(served.work.authors.stream().allMatch(author -> author.who().equals("Ada Miles")));
    }

    @Test
    void whatIsSentTwiceCountsOnce() throws Exception {
        Phone phone = served.entered("R1");
        ObjectNode event = Phone.event("K-101", "deviated").put("slot", "").put("text", "dust");
        assertEquals(phone.send(event), phone.send(event));
        assertEquals(1, served.work.recorded.size());
    }

    @Test
    void whatCantBeRightIsRefusedByItselfAndTheRestIsKept() throws Exception {
        Phone phone = served.entered("R1");
        JsonNode receipt = phone.send(
                Phone.event("K-201", "ticked").put("step", 1).put("done", true),
                Phone.event("K-101", "ticked").put("step", 5).put("done", true),
                Phone.event("K-101", "ticked").put("step", 1).put("done", true).put("plan", 2),
                Phone.event("K-101", "serial").put("slot", "DIMM9").put("serial", "x"),
                Phone.event("K-101", "became").put("state", "failed").put("reason", " "),
                Phone.event("K-101", "became").put("state", "exploded").put("reason", ""),
                Phone.event("K-101", "deviated").put("slot", "").put("text", "x".repeat(1001)),
                Phone.event("K-101", "deviated").put("slot", "").put("text", "x").put("at", "yesterday"),
                Phone.event("K-101", "deviated").put("slot", "").put("text", "x").put("id", "1"),
                Phone.event("", "deviated").put("slot", "").put("text", "x"),
                Phone.event("K-101", "danced"),
                Phone.event("K-101", "ticked").put("step", 1).put("done", true));
        assertEquals(11, receipt.path("refused").size(), receipt.toString());
        receipt.path("refused").forEach(refusal -> assertTrue(refusal.path("why").asText().endsWith("."),
                refusal.toString()));
        assertEquals(1, served.work.recorded.size());
        assertEquals(new JobEvent.What.Ticked(1, true), served.work.recorded.get(0).what());
    }

    @Test
    void whileTheProjectCantBeWrittenThePhoneIsToldToWaitAndNothingOfTheInside() throws Exception {
        Phone phone = served.entered("R1");
        phone.round();
        served.work.broken = true;
        HttpResponse<String> answer = phone.tell(Phone.event("K-101", "ticked").put("step", 1).put("done", true));
        assertEquals(503, answer.statusCode());
        assertFalse(answer.body().contains("/secret/folder"), answer.body());
        served.work.broken = false;
        assertEquals(200, phone.tell(Phone.event("K-101", "ticked").put("step", 1).put("done", true)).statusCode());
    }

    @Test
    void anEnteredPhoneGoesOnWhenTheServerIsStartedAgainAndSecretsAreNotShownAgain() throws Exception {
        Phone phone = served.entered("R1");
        served.stop();
        served.startAgain();
        assertEquals(200, phone.round().statusCode());
        assertTrue(served.server().passes().stream().allMatch(pass -> pass.entry().isEmpty()));
    }

    @Test
    void aNewSecretEndsTheOldOneAndTheSessionsOfItsRoundAlone() throws Exception {
        String old = served.secret("R1");
        Phone one = served.entered("R1");
        Phone two = served.entered("R2");
        served.stop();
        served.startAgain("R1");
        assertEquals(401, one.round().statusCode());
        assertEquals(200, two.round().statusCode());
        assertEquals(403, served.phone().enter("R1", old).statusCode());
        assertEquals(200, served.phone().enter("R1", served.secret("R1")).statusCode());
    }

    @Test
    void secretsAndSessionsExpire() throws Exception {
        Phone phone = served.entered("R1");
        clock.forward(Duration.ofDays(7).minusSeconds(1));
        assertEquals(200, phone.round().statusCode());
        clock.forward(Duration.ofSeconds(2));
        assertEquals(401, phone.round().statusCode());
        assertEquals(403, served.phone().enter("R1", served.secret("R1")).statusCode());
    }

    @Test
    void whoHasLeftSeesNothingAnyMore() throws Exception {
        Phone phone = served.entered("R1");
        assertEquals(200, phone.post("/api/leave", "{}").statusCode());
        assertEquals(401, phone.round().statusCode());
    }

    @Test
    void aRoundThatWasGivenToSomebodyElseIsNoLongerShown() throws Exception {
        Phone phone = served.entered("R1");
        served.work.rounds = List.of(SmallWork.round("R1", "Cleo Vance", "K-101"));
        served.stop();
        served.startAgain();
        assertEquals(401, phone.round().statusCode());
        assertEquals(200, served.phone().enter("R1", served.secret("R1")).statusCode());
    }

    @Test
    void theFileOfPassesHoldsNoSecretAndIsItsOwnersAlone() throws Exception {
        Phone phone = served.entered("R1");
        Path file = project.resolve("phones/passes.json");
        String kept = Files.readString(file);
        String secret = served.secret("R1");
        assertFalse(kept.contains(secret) || kept.contains(secret.replace("-", "")), kept);
        assertFalse(kept.contains(phone.cookie().substring(phone.cookie().indexOf('=') + 1)), kept);
        if (Files.getFileStore(file).supportsFileAttributeView("posix")) {
            assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
        }
    }

    @Test
    void thePassesArePrintedOnceWithLinkAndCode() throws Exception {
        Path page = project.resolve("passes.html");
        served.server().writePasses(page);
        String text = Files.readString(page);
        Pass pass = served.server().passes().get(0);
        assertTrue(text.contains(pass.entry().orElseThrow().secret()) && text.contains("Ada Miles"), text);
        assertEquals(served.address() + "#r=R1&s=" + pass.entry().get().secret(), pass.entry().get().link().toString());
        assertFalse(pass.toString().contains(pass.entry().get().secret()), pass.toString());
        assertThrows(ServeException.class, () -> served.server().writePasses(page));
        assertEquals(served.address() + "#m=K-101", Codes.read(text, 1));
        assertEquals(served.address() + "#m=K-102", Codes.read(text, 2));
        assertEquals(pass.entry().get().link().toString(), Codes.read(text, 0));
        assertFalse(text.contains(SmallWork.ODD_TAG), text);
    }

    @Test
    void aPortThatIsTakenIsNamed() {
        ServeException problem = assertThrows(ServeException.class,
                () -> served.start(Served.request(project, served.address().getPort())));
        assertTrue(problem.getMessage().contains("--port"), problem.getMessage());
    }

    @Test
    void onlyAnAddressOfThisComputerIsServed() {
        for (String other : List.of("0.0.0.0", "192.0.2.7", "")) {
            ServeException problem = assertThrows(ServeException.class, () -> served.start(new ServeRequest(project,
                    Optional.of(other), 0, Optional.empty(), Duration.ofDays(1), Set.of())));
            assertTrue(problem.getMessage().contains("is not an address of this computer"), problem.getMessage());
        }
    }

    @Test
    void aProjectWithoutRoundsIsRefused() {
        served.work.rounds = List.of();
        assertThrows(ServeException.class, () -> served.start(Served.request(project, 0)));
    }

    @Test
    void aNewSecretForARoundThatIsNotThereIsRefused() {
        ServeException problem =
                assertThrows(ServeException.class, () -> served.start(Served.request(project, 0, "R7")));
        assertEquals("There is no round R7. There are: R1, R2.", problem.getMessage());
    }
}
