package slotledger.cli.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.firmware.FirmwareReading;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Facts;
import slotledger.firmware.fact.Problem;
import slotledger.firmware.fact.Told;
import slotledger.firmware.spd.Profile;

/** What firmware says, as plain values for other programs: every fact with its raw and its decoded value. */
final class FirmwareFacts {

    private FirmwareFacts() {
    }

    static Map<String, Object> of(FirmwareReading reading) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("place", reading.place());
        if (reading instanceof FirmwareReading.OfTable found) {
            facts.put("kind", "table");
            found.table().version().ifPresent(version -> facts.put("version", version));
            facts.put("structures", found.table().structures().stream().map(structure -> {
                Map<String, Object> one = new LinkedHashMap<>();
                one.put("type", structure.kind().type());
                one.put("title", structure.kind().title());
                one.put("handle", structure.handle());
                one.put("facts", list(structure.facts()));
                return one;
            }).toList());
        } else if (reading instanceof FirmwareReading.OfModule found) {
            facts.put("kind", "module");
            facts.put("facts", list(found.module().facts()));
            facts.put("profiles", found.module().profiles().stream().map(FirmwareFacts::profile).toList());
        } else {
            facts.put("kind", "refused");
        }
        facts.put("problems", reading.problems().stream().map(FirmwareFacts::problem).toList());
        return facts;
    }

    private static List<Map<String, Object>> list(Facts facts) {
        return facts.all().stream().map(FirmwareFacts::told).toList();
    }

    private static Map<String, Object> told(Told<?> told) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("fact", told.fact().name());
        one.put("raw", told.raw());
        one.put("value", told.value().<Object>map(value -> value instanceof Integer number ? number
                : value instanceof ByteCount count ? (Object) count.bytes() : told.text()).orElse(null));
        return one;
    }

    private static Map<String, Object> profile(Profile profile) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("name", profile.name());
        one.put("cyclePs", profile.cycle());
        one.put("rate", profile.rate());
        one.put("millivolts", profile.voltage().orElse(null));
        return one;
    }

    private static Map<String, Object> problem(Problem problem) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("offset", problem.offset() == Problem.NOWHERE ? null : problem.offset());
        one.put("where", problem.where());
        one.put("seen", problem.seen());
        one.put("expected", problem.expected());
        return one;
    }
}
