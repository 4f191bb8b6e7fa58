package slotledger.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.smbios.ArrayFacts;
import slotledger.firmware.smbios.DeviceFacts;
import slotledger.firmware.smbios.FormFactor;
import slotledger.firmware.smbios.MachineFacts;
import slotledger.firmware.smbios.MemoryType;
import slotledger.firmware.smbios.SmbiosTable;
import slotledger.firmware.smbios.Structure;
import slotledger.firmware.smbios.StructureKind;

/** Lists of records; machines and parts are invented, forms are those of the lister and of Windows shells. */
class ListsTest {

    private static final String CSV = """
            Node,Capacity,DeviceLocator,FormFactor,MemoryType,PartNumber,SMBIOSMemoryType,Speed
            PC-1,8589934592,DIMM1,8,0,"PART, long  ",26,2400
            PC-1,8589934592,DIMM3,12,24,PART-2,0,1600

            Node,MaxCapacity,MemoryDevices,MemoryErrorCorrection,Use
            PC-1,33554432,4,3,3
            """;

    private static final String JSON = """
            {"memory": [{"Capacity": 8589934592, "DeviceLocator": "DIMM1", "FormFactor": 8, "MemoryType": 0,
              "PartNumber": "PART, long  ", "SMBIOSMemoryType": 26, "Speed": 2400, "Asset": null},
             {"Capacity": 8589934592, "DeviceLocator": "DIMM3", "FormFactor": 12, "MemoryType": 24,
              "PartNumber": "PART-2", "SMBIOSMemoryType": 0, "Speed": 1600}],
             "arrays": {"MaxCapacity": 33554432, "MemoryDevices": 4, "MemoryErrorCorrection": 3, "Use": 3}}
            """;

    private static final String XML = """
            <?xml version="1.0"?>
            <CIM>
              <INSTANCE CLASSNAME="Win32_PhysicalMemory"><PROPERTY NAME="Capacity"><VALUE>8589934592</VALUE></PROPERTY>
                <PROPERTY NAME="DeviceLocator"><VALUE>DIMM1</VALUE></PROPERTY>
                <PROPERTY NAME="FormFactor"><VALUE>8</VALUE></PROPERTY>
                <PROPERTY NAME="SMBIOSMemoryType"><VALUE>26</VALUE></PROPERTY>
                <PROPERTY NAME="PartNumber"><VALUE>PART, long  </VALUE></PROPERTY>
                <PROPERTY NAME="Speed"><VALUE>2400</VALUE></PROPERTY></INSTANCE>
              <Obj><Props><U64 N="Capacity">8589934592</U64><S N="DeviceLocator">DIMM3</S><U16 N="FormFactor">12</U16>
                <U16 N="MemoryType">24</U16><S N="PartNumber">PART-2</S><U32 N="Speed">1600</U32></Props></Obj>
              <Object><Property Name="MaxCapacity">33554432</Property><Property Name="MemoryDevices">4</Property>
                <Property Name="MemoryErrorCorrection">3</Property><Property Name="Use">3</Property></Object>
            </CIM>
            """;

    @ParameterizedTest
    @ValueSource(strings = {CSV, JSON, XML})
    void recordsOfWindowsGiveSlotsAndEmptyOnesAreTakenFromTheArray(String text) {
        SmbiosTable table = tables(text, StandardCharsets.UTF_8).get(0);
        List<Structure> devices = table.memoryDevices();
        assertEquals(4, devices.size());
        Structure first = devices.get(0);
        assertEquals(Optional.of(FormFactor.DIMM), first.get(DeviceFacts.FORM), "8 is DIMM here, 9 in SMBIOS");
        assertEquals(Optional.of(FormFactor.SODIMM), devices.get(1).get(DeviceFacts.FORM));
        assertEquals(Optional.of(MemoryType.DDR4), first.get(DeviceFacts.TYPE));
        assertEquals(Optional.of(MemoryType.DDR3), devices.get(1).get(DeviceFacts.TYPE), "24 of the older property");
        assertEquals(Optional.of("PART, long"), first.get(DeviceFacts.PART));
        assertEquals(Optional.of(ByteCount.NOTHING), devices.get(3).get(DeviceFacts.SIZE));
        assertTrue(devices.get(3).get(DeviceFacts.LOCATOR).isEmpty());
        assertEquals(Optional.of(ByteCount.ofMib(32768)),
                table.memoryArrays().get(0).get(ArrayFacts.LARGEST));
        assertEquals(List.of(), table.problems());
    }

    @Test
    void aListInTheEncodingOfAWindowsShellIsReadToo() {
        assertEquals(tables(CSV, StandardCharsets.UTF_8), tables("\uFEFF" + CSV, StandardCharsets.UTF_16LE));
    }

    @Test
    void machinesAreToldApartByTheirNames() {
        String two = "PSComputerName;Capacity;DeviceLocator\nA;1073741824;X\nB;2147483648;X\nA;1073741824;Y\n";
        List<SmbiosTable> tables = tables(two, StandardCharsets.UTF_8);
        assertEquals(List.of(2, 1), tables.stream().map(table -> table.memoryDevices().size()).toList());
        assertTrue(tables.get(0).problems().toString().contains("no record of an array"));
    }

    @Test
    void aNumberThatIsNoneIsNamed() {
        SmbiosTable table = tables("Capacity,DeviceLocator,Speed\n8 GB,A,fast\n", StandardCharsets.UTF_8).get(0);
        assertTrue(table.problems().toString().contains("Capacity is \"8 GB\""), table.problems().toString());
        assertTrue(table.memoryDevices().get(0).get(DeviceFacts.SIZE).isEmpty());
    }

    /** Versions 2.4, 2.12 and 3.4 of the lister. */
    @ParameterizedTest
    @ValueSource(strings = {
        "Handle 0x1100\n\tDMI type 17, 27 bytes.\n\tMemory Device\n\t\tArray Handle: 0x1000\n\t\tSize: 1024 MB\n"
                + "\t\tForm Factor: DIMM\n\t\tType: DDR2\n\t\tSpeed: 800 MHz (1.2 ns)\n\t\tManufacturer: 7F98\n",
        "Handle 0x1100, DMI type 17, 34 bytes.\nMemory Device\n\tArray Handle: 0x1000\n\tSize: 1024 MB\n"
                + "\tForm Factor: DIMM\n\tType: DDR2\n\tSpeed: 800 MHz\n\tConfigured Clock Speed: 667 MHz\n",
        "Handle 0x1100, DMI type 17, 40 bytes\nMemory Device\n\tArray Handle: 0x1000\n\tSize: 1 GB\n"
                + "\tForm Factor: DIMM\n\tType: DDR2\n\tSpeed: 800 MT/s\n\tConfigured Memory Speed: 667 MT/s\n"})
    void everySpellingOfTheListerIsRead(String text) {
        Structure device = tables(text, StandardCharsets.UTF_8).get(0).first(StructureKind.DEVICE).orElseThrow();
        assertEquals(0x1100, device.handle());
        assertEquals(Optional.of(0x1000), device.get(DeviceFacts.ARRAY));
        assertEquals(Optional.of(ByteCount.ofMib(1024)), device.get(DeviceFacts.SIZE));
        assertEquals(Optional.of(MemoryType.DDR2), device.get(DeviceFacts.TYPE));
        assertEquals(Optional.of(800), device.get(DeviceFacts.RATE));
        assertTrue(device.get(DeviceFacts.CONFIGURED_RATE).filter(rate -> rate != 667).isEmpty());
    }

    /** Numbers: JEDEC JEP106, banks 1, 2 and 6. */
    @ParameterizedTest
    @CsvSource({"80CE, Samsung", "JEDEC ID:80 AD, SK Hynix", "859B, Crucial", "0x2C00, Micron", "0198, Kingston",
        "7F98000000000000, Kingston", "7F7F7F7F7F510000, Qimonda", "FACE, FACE", "Some Maker, Some Maker"})
    void aMakerWhoseNumberTheFirmwareTellsHasItsName(String told, String maker) {
        String text = "Handle 0x0001, DMI type 17, 40 bytes\nMemory Device\n\tManufacturer: " + told + "\n";
        Structure device = tables(text, StandardCharsets.UTF_8).get(0).first(StructureKind.DEVICE).orElseThrow();
        assertEquals(Optional.of(maker), device.get(DeviceFacts.MAKER));
        assertEquals(Optional.of(told), device.facts().raw(DeviceFacts.MAKER));
    }

    @Test
    void listingsOfSeveralMachinesInOneFileAreToldApart() {
        String one = "# dmidecode 3.4\nHandle 0x0001, DMI type 17, 40 bytes\nMemory Device\n\tSize: 1 GB\n\n";
        assertEquals(3, tables(one.repeat(3), StandardCharsets.UTF_8).size());
    }

    private static List<SmbiosTable> tables(String text, Charset charset) {
        return new FirmwareReader().read("list", text.getBytes(charset)).stream().map(reading -> {
            assertTrue(reading instanceof FirmwareReading.OfTable, reading.toString());
            return ((FirmwareReading.OfTable) reading).table();
        }).toList();
    }

    @Test
    void aListingWithStrayControlCharactersIsAListing() {
        String text = "# dmidecode 3.3\nHandle 0x0011, DMI type 17, 40 bytes\nMemory Device\n\tSize: 8 GB\n"
                + "\tLocator: DIMM1\n\tPart Number: A\u0001B\u0002\n\tSerial Number: 12345678901234567890123\n"
                + "\tManufacturer: a maker with a name of some length, so that text prevails\n";
        assertTrue(new FirmwareReader().read("x.txt", text.getBytes(StandardCharsets.UTF_8)).get(0)
                instanceof FirmwareReading.OfTable);
    }

    @Test
    void recordsOfOtherClassesSayWhichMachineItIs() {
        String text = """
                [{"Manufacturer": "Kestrin", "Model": "KB-510"},
                 {"Vendor": "Kestrin", "Name": "KB-510", "Version": "1.0", "IdentifyingNumber": "S-4711"},
                 {"SMBIOSAssetTag": "K-17", "SerialNumber": "S-4711"},
                 {"SocketDesignation": "CPU0", "Manufacturer": "Corvid", "Name": "Corvid 5 8400", "NumberOfCores": 6},
                 {"Manufacturer": "a foundry", "Model": "", "MemoryDevices": 2, "MaxCapacity": 33554432, "Use": 3},
                 {"BankLabel": "BANK 0", "DeviceLocator": "DIMM1", "Capacity": 8589934592, "FormFactor": 8,
                  "SMBIOSMemoryType": 26, "Manufacturer": "Tallow", "PartNumber": "TL-8G"}]
                """;
        SmbiosTable table = ((FirmwareReading.OfTable) new FirmwareReader()
                .read("K-17.json", text.getBytes(StandardCharsets.UTF_8)).get(0)).table();
        assertEquals(Optional.of("KB-510"), table.first(StructureKind.SYSTEM).orElseThrow().get(MachineFacts.PRODUCT));
        assertEquals(Optional.of("S-4711"), table.first(StructureKind.SYSTEM).orElseThrow().get(MachineFacts.SERIAL));
        assertEquals(Optional.of("K-17"), table.first(StructureKind.CHASSIS).orElseThrow()
                .get(MachineFacts.ASSET_TAG));
        assertEquals(Optional.of("Corvid 5 8400"), table.first(StructureKind.PROCESSOR).orElseThrow()
                .get(MachineFacts.VERSION));
        assertEquals(2, table.memoryDevices().size());
    }
}
