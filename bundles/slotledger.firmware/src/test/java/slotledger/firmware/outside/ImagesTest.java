package slotledger.firmware.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.firmware.FirmwareReader;
import slotledger.firmware.FirmwareReading;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Fact;
import slotledger.firmware.spd.Profile;
import slotledger.firmware.spd.SpdFacts;
import slotledger.firmware.spd.SpdModule;
import slotledger.firmware.spd.SpdType;
import slotledger.testkit.OutsideData;

/** Outside checks: SPD images of real modules as Debian's decode-dimms reads them, and makers' lists of parts. */
class ImagesTest {

    private static final Pattern DDR5_ROW = Pattern.compile("\\./(.*?) \\{(.*)}");

    @TempDir
    private Path folder;

    private final FirmwareReader reader = new FirmwareReader();

    @Test
    void everyImageUpToDdr4SaysWhatTheOtherDecoderPrints() throws IOException {
        Tool decoder = Tool.find("decode-dimms", "i2c-tools");
        List<String> differences = new ArrayList<>();
        int images = 0;
        int facts = 0;
        for (Path file : images()) {
            Optional<SpdModule> module = module(file);
            if (module.isEmpty() || module.get().get(SpdFacts.TYPE).filter(SpdType.DDR5::equals).isPresent()) {
                continue;
            }
            String text = decoder.run("-x", hexDump(Files.readAllBytes(file)).toString());
            images++;
            facts += compare(file.getFileName().toString(), module.get(), text, differences);
        }
        assertEquals(List.of(), differences);
        assertTrue(images >= 28 && facts > 220, images + " images, " + facts + " facts");
        System.getLogger("slotledger.firmware").log(System.Logger.Level.INFO,
                images + " images, " + facts + " facts alike");
    }

    private static int compare(String name, SpdModule module, String text, List<String> differences) {
        int compared = 0;
        compared += same(name, text, "Size +(\\d+) MB", differences, module.get(SpdFacts.CAPACITY)
                .map(size -> size.bytes() >> 20));
        compared += same(name, text, "(?:Ranks|Number of Module Rows) +(\\d+)", differences,
                module.get(SpdFacts.RANKS));
        compared += same(name, text, "SDRAM Device Width +(\\d+) bits", differences,
                module.get(SpdFacts.CHIP_WIDTH));
        compared += same(name, text, "Primary Bus Width +(\\d+) bits", differences, module.get(SpdFacts.DATA_WIDTH));
        compared += same(name, text, "Bus Width Extension +(\\d+) bits", differences,
                module.get(SpdFacts.CHECK_WIDTH));
        compared += same(name, text, "Maximum module speed +(\\d+) MT/s", differences, module.get(SpdFacts.RATE));
        compared += same(name, text, "Fundamental Memory type +(\\S+ SDRAM)", differences,
                module.get(SpdFacts.TYPE).map(SpdType::text));
        compared += same(name, text, "SPD Revision +(\\d\\.\\d)", differences, module.get(SpdFacts.REVISION));
        compared += same(name, text, "Part Number +(\\S.*?) *$", differences, module.get(SpdFacts.PART)
                .map(part -> part));
        compared += same(name, text, "Manufacturing Date +(\\d{4}-W\\d\\d)", differences,
                module.get(SpdFacts.MADE).map(made -> made.replace(" week ", "-W")));
        compared += same(name, text, "Serial Number +0x(\\w+)", differences, module.get(SpdFacts.SERIAL));
        compared += same(name, text, "Module Type +((?:[URL]+|SO-)DIMM)", differences,
                module.get(SpdFacts.SHAPE).map(Object::toString));
        boolean cut = module.problems().stream().anyMatch(problem -> problem.seen().contains("ends before"));
        boolean crcWrong = cut || text.contains("Calculated 0x") || text.contains("Mismatch");
        boolean ours = module.problems().stream().anyMatch(problem -> problem.seen().contains("checksum"));
        if (crcWrong != ours) {
            differences.add(name + ": checksum wrong " + crcWrong + ", we say " + ours);
        }
        maker(name, module, SpdFacts.MAKER, "Module Manufacturer", text, differences);
        maker(name, module, SpdFacts.CHIP_MAKER, "DRAM Manufacturer", text, differences);
        return compared;
    }

    /** Names differ in their length: the first word must be alike. */
    private static void maker(String name, SpdModule module, Fact<String> fact, String word, String text,
            List<String> differences) {
        Matcher printed = Pattern.compile("^(?:" + word + "|Manufacturer) +(\\S.*?) *$", Pattern.MULTILINE)
                .matcher(text);
        if (printed.find() && module.get(fact).isPresent()
                && !firstWord(printed.group(1)).equals(firstWord(module.get(fact).get()))) {
            differences.add("%s: %s printed %s, decoded %s".formatted(name, word, printed.group(1),
                    module.get(fact).get()));
        }
    }

    private static String firstWord(String text) {
        return text.replace("SK Hynix", "Hynix").replaceFirst("[ -].*", "");
    }

    private static int same(String name, String text, String pattern, List<String> differences, Optional<?> ours) {
        Matcher printed = Pattern.compile("^" + pattern, Pattern.MULTILINE).matcher(text);
        if (!printed.find() || printed.group(1).equals("Undefined")) {
            return 0;
        }
        if (!printed.group(1).equals(ours.map(Object::toString).orElse("nothing"))) {
            differences.add("%s: printed %s, decoded %s".formatted(name, printed.group(), ours));
        }
        return 1;
    }

    @Test
    void everyDdr5ImageSaysWhatTheSmallScriptBesideTheDataFound() throws IOException {
        int rows = 0;
        for (String line : Files.readAllLines(OutsideData.file("spd/expected-ddr5.txt"))) {
            Matcher row = DDR5_ROW.matcher(line);
            if (!row.matches() || !row.group(2).contains("'type': 'DDR5'")) {
                continue;
            }
            Path file = OutsideData.file("spd/" + row.group(1));
            SpdModule module = module(file).orElseThrow();
            String values = row.group(2);
            assertEquals(Optional.of(ByteCount.ofMib((long) (1024 * Double.parseDouble(value(values, "GB"))))),
                    module.get(SpdFacts.CAPACITY), line);
            assertEquals(value(values, "ranks"), text(module, SpdFacts.RANKS), line);
            assertEquals(value(values, "width"), text(module, SpdFacts.CHIP_WIDTH), line);
            assertEquals(value(values, "tCKmin_ps"), text(module, SpdFacts.CYCLE), line);
            assertEquals(value(values, "MTs").startsWith("56") ? "5600" : "4800", text(module, SpdFacts.RATE), line);
            assertEquals(2 * Integer.parseInt(value(values, "bus")), module.get(SpdFacts.DATA_WIDTH).orElse(0), line);
            assertEquals(2 * Integer.parseInt(value(values, "ext")), module.get(SpdFacts.CHECK_WIDTH).orElse(-1),
                    line);
            assertEquals(value(values, "module"), text(module, SpdFacts.SHAPE), line);
            assertTrue(values.contains("'part': '" + text(module, SpdFacts.PART)), line);
            boolean profile = values.contains("'xmp': True") || values.contains("'expo': True");
            assertEquals(profile, !module.profiles().isEmpty(), line + module.profiles());
            rows++;
        }
        assertTrue(rows >= 6, rows + " rows");
    }

    private static String value(String row, String key) {
        Matcher matcher = Pattern.compile("'" + key + "': '?([^,']*)").matcher(row);
        assertTrue(matcher.find(), key);
        return matcher.group(1);
    }

    private static String text(SpdModule module, Fact<?> fact) {
        return module.get(fact).map(Object::toString).orElse("nothing");
    }

    /** Sold as 6000; the memory itself promises 4800 (trade-facts A2, trap 5). */
    @Test
    void aModuleSoldAsFasterHasThatRateOnlyAsAProfile() throws IOException {
        SpdModule module = module(OutsideData.file("spd/ubihazard/ud5-6000_0104eef6.spd")).orElseThrow();
        assertEquals(Optional.of(4800), module.get(SpdFacts.RATE));
        assertTrue(module.profiles().stream().map(Profile::rate).anyMatch(rate -> rate == 6000),
                module.profiles().toString());
        assertTrue(module.profiles().stream().flatMap(profile -> profile.voltage().stream())
                .allMatch(mv -> mv >= 1100 && mv <= 1450), module.profiles().toString());
    }

    /** The collector's own table marks the image as rewritten: its checksums are right, its content is not. */
    @Test
    void aRightChecksumDoesNotMakeARewrittenImageHonest() throws IOException {
        try (Stream<Path> files = Files.list(OutsideData.file("spd/mixa3607-wiki"))) {
            for (Path file : files.filter(one -> one.toString().endsWith(".spd")).toList()) {
                boolean rewritten = file.getFileName().toString().startsWith("HOT");
                List<?> problems = module(file).orElseThrow().problems();
                assertEquals(rewritten, !problems.isEmpty(), file + ": " + problems);
                assertFalse(problems.toString().contains("checksum"), problems.toString());
            }
        }
    }

    @Test
    void whatIsNoImageIsRefused() throws IOException {
        assertTrue(module(OutsideData.file("spd/rigred-SPD/dump-unknown-dd.bin")).isEmpty());
    }

    @Test
    void aHexDumpOfAnyKindSaysTheSameAsItsBytes() throws IOException {
        for (Path file : images()) {
            byte[] bytes = Files.readAllBytes(file);
            Optional<SpdModule> module = module(file);
            if (module.isPresent() && bytes.length <= 1024) {
                assertEquals(module, module(hexDump(bytes)), file + " as of hexdump -C");
                assertEquals(module, module(plain(bytes)), file + " as plain digits");
                assertEquals(module, module(addressed(bytes)), file + " as of i2cdump");
                assertEquals(module, module(pairs(bytes)), file + " as of xxd");
            }
        }
    }

    @Test
    void solderedPartsHaveTheCapacityAndRateOfTheirMakersList() throws IOException {
        assertEquals(37, parts("ddr4", part -> (long) part.number("capacityPerDieGb") * part.number("diesPerPackage")
                * (64 / part.number("packageBusWidth")), "speedMTps"));
        assertEquals(76, parts("lp4x", part -> (long) part.number("densityPerChannelGb")
                * part.number("channelsPerDie") * part.number("diesPerPackage"), "speedMbps"));
        assertEquals(56, parts("lp5", part -> (long) part.number("densityPerDieGb") * part.number("diesPerPackage"),
                "speedMbps"));
    }

    private interface Gigabits {
        long of(Part part);
    }

    private record Part(String name, String attributes) {
        int number(String key) {
            Matcher matcher = Pattern.compile("\"" + key + "\": (\\d+)").matcher(attributes);
            assertTrue(matcher.find(), name + ": " + key);
            return Integer.parseInt(matcher.group(1));
        }
    }

    private int parts(String family, Gigabits capacity, String rateKey) throws IOException {
        Path top = OutsideData.file("spd/coreboot-generated/" + family);
        String json = Files.readString(top.resolve("memory_parts.json"));
        List<Part> parts = Pattern.compile("\"name\": \"([^\"]+)\",\\s*\"attribs\": \\{([^}]*)}")
                .matcher(json).results().map(found -> new Part(found.group(1), found.group(2))).toList();
        List<String> differences = new ArrayList<>();
        int checked = 0;
        try (Stream<Path> sets = Files.list(top)) {
            for (Path set : sets.filter(Files::isDirectory).sorted().toList()) {
                for (String line : Files.readAllLines(set.resolve("parts_spd_manifest.generated.txt"))) {
                    Part part = parts.stream().filter(one -> line.startsWith(one.name() + ",")).findFirst()
                            .orElse(null);
                    if (part == null) {
                        continue;
                    }
                    checked++;
                    Path image = set.resolve(line.substring(line.lastIndexOf(',') + 1));
                    SpdModule module = module(image).orElseThrow();
                    long gigabits = module.get(SpdFacts.CAPACITY).map(size -> size.bytes() >> 27).orElse(0L);
                    int rate = module.get(SpdFacts.RATE).orElse(0);
                    int listed = part.number(rateKey);
                    // An image of set 0 describes the half of a package with four channels.
                    boolean half = family.equals("lp4x") && set.endsWith("set-0")
                            && 2 * gigabits == capacity.of(part);
                    if (!half && gigabits != capacity.of(part) || Math.abs(rate - listed) > 34) {
                        differences.add("%s %s: %s %d MT/s, listed %d Gbit %d".formatted(set.getFileName(), line,
                                module.get(SpdFacts.CAPACITY), rate, capacity.of(part), listed));
                    }
                }
            }
        }
        assertEquals(List.of(), differences);
        return checked;
    }

    @Test
    void makersNamesAreThoseOfALongerListOfTheStandard() throws IOException {
        int known = 0;
        for (String line : Files.readAllLines(OutsideData.file("jep106/jep106.tsv"))) {
            String[] cells = line.split("\t");
            if (cells.length == 4 && cells[0].matches("\\d+")) {
                int bank = Integer.parseInt(cells[0]);
                byte[] image = new byte[512];
                image[0] = 0x23;
                image[2] = 0x0C;
                int continuations = bank - 1;
                image[320] = (byte) (Integer.bitCount(continuations) % 2 == 1 ? continuations : continuations | 0x80);
                image[321] = (byte) Integer.parseInt(cells[2].substring(2), 16);
                Optional<String> maker = ((FirmwareReading.OfModule) reader.read("x", image).get(0)).module()
                        .get(SpdFacts.MAKER);
                if (maker.isPresent()) {
                    known++;
                    String first = firstWord(maker.get()).toLowerCase(Locale.ROOT);
                    assertTrue(cells[3].toLowerCase(Locale.ROOT).contains(first), line + ": " + maker);
                }
            }
        }
        assertTrue(known >= 75, known + " makers");
    }

    private List<Path> images() throws IOException {
        try (Stream<Path> files = Files.walk(OutsideData.file("spd"))) {
            return files.filter(Files::isRegularFile).filter(file -> file.toString().matches("(?i).*\\.(bin|spd)"))
                    .sorted().toList();
        }
    }

    private Optional<SpdModule> module(Path file) throws IOException {
        return reader.read(List.of(file)).get(0) instanceof FirmwareReading.OfModule found
                ? Optional.of(found.module()) : Optional.empty();
    }

    private Path hexDump(byte[] bytes) throws IOException {
        return dump(bytes, "%08x  ", "%02x ", "|");
    }

    private Path addressed(byte[] bytes) throws IOException {
        return dump(bytes, "%02x: ", "%02x ", "   ");
    }

    private Path plain(byte[] bytes) throws IOException {
        return dump(bytes, "", "%02X ", null);
    }

    private Path pairs(byte[] bytes) throws IOException {
        String text = Files.readString(dump(bytes, "%08x: ", "%02x", "  "));
        Path file = folder.resolve("pairs.hex");
        StringBuilder paired = new StringBuilder();
        for (String line : text.split("\n")) {
            String digits = line.substring(10, line.indexOf("  ", 10));
            paired.append(line, 0, 10).append(digits.replaceAll("(....)(?=.)", "$1 "))
                    .append(line.substring(line.indexOf("  ", 10))).append('\n');
        }
        return Files.writeString(file, paired);
    }

    private Path dump(byte[] bytes, String address, String one, String ascii) throws IOException {
        StringBuilder text = new StringBuilder();
        for (int at = 0; at < bytes.length; at += 16) {
            text.append(address.isEmpty() ? "" : address.formatted(at));
            StringBuilder readable = new StringBuilder();
            for (int i = at; i < Math.min(at + 16, bytes.length); i++) {
                text.append(one.formatted(bytes[i] & 0xFF));
                readable.append(bytes[i] > ' ' && bytes[i] < 127 ? (char) bytes[i] : '.');
            }
            text.append(ascii == null ? "" : ascii + readable + ascii.strip()).append('\n');
        }
        return Files.write(folder.resolve("image.hex"), text.toString().getBytes(StandardCharsets.UTF_8));
    }
}
