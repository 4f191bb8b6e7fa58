package slotledger.firmware.internal.lister;

import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Coded;
import slotledger.firmware.fact.Fact;
import slotledger.firmware.fact.Facts;
import slotledger.firmware.fact.Problem;
import slotledger.firmware.fact.Problems;
import slotledger.firmware.internal.words.Makers;
import slotledger.firmware.internal.words.Placeholders;
import slotledger.firmware.smbios.AddressFacts;
import slotledger.firmware.smbios.ArrayFacts;
import slotledger.firmware.smbios.ArrayLocation;
import slotledger.firmware.smbios.ArrayUse;
import slotledger.firmware.smbios.DeviceFacts;
import slotledger.firmware.smbios.ErrorCorrection;
import slotledger.firmware.smbios.FormFactor;
import slotledger.firmware.smbios.MachineFacts;
import slotledger.firmware.smbios.MemoryTechnology;
import slotledger.firmware.smbios.MemoryType;
import slotledger.firmware.smbios.OldMemoryFacts;
import slotledger.firmware.smbios.StructureKind;
import slotledger.firmware.smbios.TypeDetail;

/** Turns the lines of one printed structure into facts. */
final class TextFacts {

    private final Map<String, BiConsumer<TextFacts, String>> meanings;
    private final Facts.Builder facts = new Facts.Builder();
    private final String name;
    private final Problems problems;

    TextFacts(StructureKind kind, String name, Problems problems) {
        this.meanings = meanings(kind);
        this.name = name;
        this.problems = problems;
    }

    void add(String key, String value) {
        BiConsumer<TextFacts, String> meaning = meanings.get(key);
        if (meaning != null) {
            meaning.accept(this, value);
        }
    }

    Facts build() {
        return facts.build();
    }

    private static Map<String, BiConsumer<TextFacts, String>> meanings(StructureKind kind) {
        return switch (kind) {
            case BIOS -> Map.of("Vendor", text(MachineFacts.VENDOR), "Version", text(MachineFacts.VERSION),
                    "Release Date", text(MachineFacts.RELEASED));
            case SYSTEM -> Map.of("Manufacturer", text(MachineFacts.MAKER), "Product Name",
                    text(MachineFacts.PRODUCT), "Product", text(MachineFacts.PRODUCT), "Vendor",
                    text(MachineFacts.MAKER), "Version", text(MachineFacts.VERSION), "Serial Number",
                    text(MachineFacts.SERIAL), "UUID", text(MachineFacts.UUID), "SKU Number", text(MachineFacts.SKU),
                    "Family", text(MachineFacts.FAMILY));
            case CHASSIS -> Map.of("Manufacturer", text(MachineFacts.MAKER), "Type", text(MachineFacts.CHASSIS_TYPE),
                    "Version", text(MachineFacts.VERSION), "Serial Number", text(MachineFacts.SERIAL), "Asset Tag",
                    text(MachineFacts.ASSET_TAG));
            case BOARD -> Map.of("Manufacturer", text(MachineFacts.MAKER), "Product Name",
                    text(MachineFacts.PRODUCT), "Version", text(MachineFacts.VERSION), "Serial Number",
                    text(MachineFacts.SERIAL), "Asset Tag", text(MachineFacts.ASSET_TAG));
            case PROCESSOR -> Map.of("Socket Designation", text(MachineFacts.SOCKET), "Manufacturer",
                    text(MachineFacts.MAKER), "Version", text(MachineFacts.VERSION), "Core Count",
                    number(MachineFacts.CORES), "Thread Count", number(MachineFacts.THREADS));
            case MEMORY_CONTROLLER -> Map.of("Maximum Memory Module Size", size(OldMemoryFacts.LARGEST_MODULE),
                    "Associated Memory Slots", number(OldMemoryFacts.SLOTS));
            case MEMORY_MODULE -> Map.of("Socket Designation", text(OldMemoryFacts.SOCKET), "Installed Size",
                    size(OldMemoryFacts.INSTALLED), "Enabled Size", size(OldMemoryFacts.ENABLED), "Current Speed",
                    number(OldMemoryFacts.ACCESS_TIME));
            case ARRAY -> Map.of("Location", coded(ArrayFacts.LOCATION, ArrayLocation.values()), "Use",
                    coded(ArrayFacts.USE, ArrayUse.values()), "Error Correction Type",
                    coded(ArrayFacts.CORRECTION, ErrorCorrection.values()), "Maximum Capacity",
                    size(ArrayFacts.LARGEST), "Number Of Devices", number(ArrayFacts.DEVICES));
            case DEVICE -> DEVICE;
            case ARRAY_ADDRESS, DEVICE_ADDRESS -> Map.of("Physical Array Handle", number(AddressFacts.ARRAY),
                    "Physical Device Handle", number(AddressFacts.DEVICE), "Partition Width",
                    number(AddressFacts.PARTITION_WIDTH), "Interleave Position",
                    number(AddressFacts.INTERLEAVE_POSITION), "Interleaved Data Depth",
                    number(AddressFacts.INTERLEAVE_DEPTH));
        };
    }

    private static final Map<String, BiConsumer<TextFacts, String>> DEVICE = Map.ofEntries(
            Map.entry("Array Handle", number(DeviceFacts.ARRAY)),
            Map.entry("Total Width", number(DeviceFacts.TOTAL_WIDTH)),
            Map.entry("Data Width", number(DeviceFacts.DATA_WIDTH)),
            Map.entry("Size", size(DeviceFacts.SIZE)),
            Map.entry("Form Factor", coded(DeviceFacts.FORM, FormFactor.values())),
            Map.entry("Set", number(DeviceFacts.SET)),
            Map.entry("Locator", text(DeviceFacts.LOCATOR)),
            Map.entry("Bank Locator", text(DeviceFacts.BANK_LOCATOR)),
            Map.entry("Type", coded(DeviceFacts.TYPE, MemoryType.values())),
            Map.entry("Type Detail", TextFacts::detail),
            Map.entry("Speed", number(DeviceFacts.RATE)),
            Map.entry("Manufacturer", (facts, value) ->
                    facts.facts.told(DeviceFacts.MAKER, value, Makers.meaning(value))),
            Map.entry("Serial Number", text(DeviceFacts.SERIAL)),
            Map.entry("Asset Tag", text(DeviceFacts.ASSET_TAG)),
            Map.entry("Part Number", text(DeviceFacts.PART)),
            Map.entry("Rank", number(DeviceFacts.RANKS)),
            Map.entry("Configured Clock Speed", number(DeviceFacts.CONFIGURED_RATE)),
            Map.entry("Configured Memory Speed", number(DeviceFacts.CONFIGURED_RATE)),
            Map.entry("Minimum Voltage", voltage(DeviceFacts.LOWEST_VOLTAGE)),
            Map.entry("Maximum Voltage", voltage(DeviceFacts.HIGHEST_VOLTAGE)),
            Map.entry("Configured Voltage", voltage(DeviceFacts.CONFIGURED_VOLTAGE)),
            Map.entry("Memory Technology", coded(DeviceFacts.TECHNOLOGY, MemoryTechnology.values())),
            Map.entry("Non-Volatile Size", size(DeviceFacts.NON_VOLATILE_SIZE)),
            Map.entry("Volatile Size", size(DeviceFacts.VOLATILE_SIZE)),
            Map.entry("Cache Size", size(DeviceFacts.CACHE_SIZE)),
            Map.entry("Logical Size", size(DeviceFacts.LOGICAL_SIZE)));

    private static BiConsumer<TextFacts, String> text(Fact<String> fact) {
        return (facts, value) -> facts.facts.told(fact, value, Placeholders.meaning(value));
    }

    private static BiConsumer<TextFacts, String> number(Fact<Integer> fact) {
        return (facts, value) -> facts.put(fact, value, Quantities.number(value));
    }

    private static BiConsumer<TextFacts, String> size(Fact<ByteCount> fact) {
        return (facts, value) -> facts.put(fact, value, Quantities.size(value));
    }

    private static BiConsumer<TextFacts, String> voltage(Fact<Integer> fact) {
        return (facts, value) -> facts.put(fact, value, Quantities.millivolts(value));
    }

    private static <E extends Coded> BiConsumer<TextFacts, String> coded(Fact<E> fact, E[] values) {
        return (facts, value) -> {
            for (E one : values) {
                if (Quantities.alike(one.text(), value)) {
                    facts.facts.told(fact, value, one.isUnknown() ? Optional.empty() : Optional.of(one));
                    return;
                }
            }
            facts.put(fact, value, Optional.empty());
        };
    }

    private static void detail(TextFacts facts, String value) {
        facts.facts.told(DeviceFacts.DETAIL, value, Quantities.detail(value)
                .filter(detail -> !detail.has(TypeDetail.Trait.UNKNOWN)));
    }

    private <T> void put(Fact<T> fact, String value, Optional<T> meaning) {
        facts.told(fact, value, meaning);
        if (meaning.isEmpty() && Placeholders.meaning(value).isPresent()) {
            problems.add(Problem.of(name, "%s is \"%s\"".formatted(fact.name(), value), "what a lister prints there"));
        }
    }
}
