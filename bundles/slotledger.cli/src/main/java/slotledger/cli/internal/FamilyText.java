package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import slotledger.model.family.Faces;
import slotledger.model.family.Family;
import slotledger.model.family.FamilyFact;
import slotledger.model.family.Grade;
import slotledger.model.module.Buffering;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.unit.AccessTime;
import slotledger.model.unit.Voltage;

/** Families of memory in words and as facts. */
final class FamilyText {

    private static final int ID = 16;
    private static final int NAME = 24;
    private static final int PINS = 4;
    private static final int BITS = 10;
    private static final int VOLTS = 15;
    private static final int GRADES = 10;
    private static final String SOURCE = "             ";

    private FamilyText() {
    }

    /** A line a family, at most {@link Wrapped#WIDTH} wide. */
    static List<String> table(List<Family> families) {
        List<String> lines = new ArrayList<>();
        lines.add(row("id", "family", "pins", "bits", "volts", "MT/s or ns", "usual sizes"));
        for (Family family : families) {
            lines.add(row(family.id(), family.name(), number(family.pins()), bits(family),
                    volts(family.voltages()).replace(" V", ""), grades(family),
                    family.smallest() + "-" + family.largest()));
        }
        lines.add("");
        lines.addAll(Wrapped.lines("Bits: data bits of a module, in brackets with check bits. \"families\" with an id "
                + "shows one family with its notch, standards and sources.", Wrapped.WIDTH));
        return lines;
    }

    private static String row(String id, String name, String pins, String bits, String volts, String grades,
            String sizes) {
        return String.join(" ", Wrapped.cell(id, ID), Wrapped.cell(name, NAME), Wrapped.cell(pins, PINS),
                Wrapped.cell(bits, BITS), Wrapped.cell(volts, VOLTS), Wrapped.cell(grades, GRADES), sizes);
    }

    private static String number(OptionalInt number) {
        return number.isPresent() ? String.valueOf(number.getAsInt()) : "-";
    }

    private static String bits(Family family) {
        if (family.dataBits().isEmpty()) {
            return "-";
        }
        int data = family.dataBits().getAsInt();
        List<String> checked = family.checkBits().stream()
                .map(bits -> String.valueOf(data + family.words() * bits)).toList();
        return data + (checked.isEmpty() ? "" : " (" + String.join("/", checked) + ")");
    }

    private static String volts(List<Voltage> voltages) {
        return String.join(", ", voltages.stream().map(Voltage::toString).toList());
    }

    private static String grades(Family family) {
        if (family.grades().isEmpty()) {
            List<AccessTime> times = family.accessTimes();
            return times.get(0).nanoseconds() + "-" + times.get(times.size() - 1).nanoseconds() + " ns";
        }
        List<Grade> grades = family.grades();
        int first = grades.get(0).rate().megatransfers();
        int last = grades.get(grades.size() - 1).rate().megatransfers();
        return first == last ? String.valueOf(first) : first + "-" + last;
    }

    /** What one looks for first, each fact with its source, in lines of {@link Wrapped#WIDTH} less a margin. */
    static List<String> row(Family family) {
        List<String> lines = new ArrayList<>();
        fact(lines, family, FamilyFact.PINS, number(family.pins()) + " pins");
        fact(lines, family, FamilyFact.NOTCH, "notch: " + family.notch());
        fact(lines, family, FamilyFact.WIDTH, width(family));
        fact(lines, family, FamilyFact.VOLTS, volts(family));
        fact(lines, family, FamilyFact.SIZES, "usual modules from " + family.smallest() + " to " + family.largest());
        return lines;
    }

    private static void fact(List<String> lines, Family family, FamilyFact fact, String text) {
        family.source(fact).ifPresent(source ->
                lines.addAll(Wrapped.lines(text + "  [" + source + "]", Wrapped.WIDTH - SOURCE.length() - 2)));
    }

    /** Everything of one family, each fact with its source. */
    static List<String> page(Family family) {
        List<String> lines = new ArrayList<>();
        lines.add(family.name() + "  (" + family.id() + ")");
        lines.add("");
        line(lines, "Generation", String.join(", ", generations(family)), family, null);
        line(lines, "Form", family.form().text(), family, null);
        line(lines, "Buffering", String.join(", ", bufferings(family)), family, null);
        line(lines, "Pins", family.pins().isEmpty() ? "" : number(family.pins()), family, FamilyFact.PINS);
        line(lines, "Contacts", family.source(FamilyFact.FACES).isEmpty() ? "" : family.faces().text(), family,
                FamilyFact.FACES);
        line(lines, "Notch", family.notch(), family, FamilyFact.NOTCH);
        line(lines, "Width", width(family), family, FamilyFact.WIDTH);
        line(lines, "Voltage", volts(family), family, FamilyFact.VOLTS);
        line(lines, "Grades", grades(family.grades(), family.channelBits()), family, FamilyFact.GRADES);
        line(lines, "Access time", String.join(", ", family.accessTimes().stream().map(AccessTime::toString).toList()),
                family, FamilyFact.ACCESS_TIMES);
        line(lines, "Sizes", family.smallest() + " to " + family.largest(), family, FamilyFact.SIZES);
        line(lines, "Standards", family.standards(), family, FamilyFact.STANDARDS);
        line(lines, "Remark", family.remark(), family, FamilyFact.REMARK);
        return lines;
    }

    private static void line(List<String> lines, String word, String text, Family family, FamilyFact fact) {
        if (text.isEmpty()) {
            return;
        }
        lines.addAll(Wrapped.behind(Wrapped.cell(word, SOURCE.length()), text));
        if (fact != null) {
            family.source(fact).ifPresent(source -> lines.addAll(Wrapped.behind(SOURCE + "  [", source + "]")));
        }
    }

    private static List<String> generations(Family family) {
        return family.generations().stream().sorted().map(Generation::text).toList();
    }

    private static List<String> bufferings(Family family) {
        return family.bufferings().stream().sorted().map(Buffering::text).toList();
    }

    private static String width(Family family) {
        if (family.dataBits().isEmpty()) {
            return "";
        }
        String words = family.words() == 1 ? "" : family.words() + " x ";
        String check = family.checkBits().isEmpty() ? ", none with check bits"
                : ", with check bits " + String.join(" or ", family.checkBits().stream()
                        .map(bits -> words + (family.wordBits().getAsInt() + bits)).toList());
        String channels = family.channels() == 1 ? "" : ", towards " + family.channels() + " memory channels";
        return words + family.wordBits().getAsInt() + " data bits" + check + channels;
    }

    private static String volts(Family family) {
        List<Voltage> sure = family.sureVoltages().stream().sorted().toList();
        String surely = sure.isEmpty() ? "; no voltage suits every module, look at the label"
                : sure.size() == family.voltages().size() ? "" : "; every module works at " + volts(sure);
        return volts(family.voltages()) + surely;
    }

    /** "2666 = PC4-21300 (21.3 GB/s)": the peak is that of one memory channel. */
    private static String grades(List<Grade> grades, OptionalInt channelBits) {
        return String.join(", ", grades.stream().map(grade -> grade.rate().megatransfers() + " = " + grade.name()
                + (channelBits.isEmpty() ? "" : " (" + grade.peak(channelBits.getAsInt()) + ")")).toList());
    }

    static Map<String, Object> facts(Family family) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("id", family.id());
        facts.put("name", family.name());
        facts.put("generations", generations(family));
        facts.put("form", family.form().text());
        facts.put("bufferings", bufferings(family));
        family.pins().ifPresent(pins -> facts.put("pins", pins));
        facts.put("sameSignalOnBothFaces", family.faces() == Faces.JOINED);
        facts.put("notch", family.notch());
        family.dataBits().ifPresent(bits -> facts.put("dataBits", bits));
        facts.put("words", family.words());
        facts.put("checkBitsPerWord", family.checkBits());
        facts.put("channels", family.channels());
        facts.put("millivolts", family.voltages().stream().map(Voltage::millivolts).toList());
        facts.put("sureMillivolts", family.sureVoltages().stream().sorted().map(Voltage::millivolts).toList());
        facts.put("grades", family.grades().stream().map(FamilyText::facts).toList());
        facts.put("accessTimesNs", family.accessTimes().stream().map(AccessTime::nanoseconds).toList());
        facts.put("smallestKiB", family.smallest().kibibytes());
        facts.put("largestKiB", family.largest().kibibytes());
        facts.put("standards", family.standards());
        facts.put("remark", family.remark());
        Map<String, Object> sources = new LinkedHashMap<>();
        for (FamilyFact fact : FamilyFact.values()) {
            family.source(fact).map(Source::toString).ifPresent(source -> sources.put(fact.text(), source));
        }
        facts.put("sources", sources);
        return facts;
    }

    private static Map<String, Object> facts(Grade grade) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("rate", grade.rate().megatransfers());
        facts.put("name", grade.name());
        facts.put("kilotransfers", grade.kilotransfers());
        return facts;
    }
}
