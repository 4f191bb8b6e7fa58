package slotledger.rules.internal;

import java.util.List;
import slotledger.rules.internal.chips.ChannelRanksFit;
import slotledger.rules.internal.chips.ChipSizeFits;
import slotledger.rules.internal.chips.ChipWidthFits;
import slotledger.rules.internal.chips.ChipsAddUp;
import slotledger.rules.internal.chips.ModuleRanksFit;
import slotledger.rules.internal.ddr.HighDensity;
import slotledger.rules.internal.ddr.Supply400;
import slotledger.rules.internal.ddr2.DoubleSidedX16;
import slotledger.rules.internal.ddr2.FullyBuffered;
import slotledger.rules.internal.ddr3.Ddr3Chips;
import slotledger.rules.internal.ddr3.LowVoltageUnsaid;
import slotledger.rules.internal.ddr3.ThirdBesideQuadRank;
import slotledger.rules.internal.ddr4.TwoCapacities;
import slotledger.rules.internal.ddr5.AlikeInChannel;
import slotledger.rules.internal.ddr5.OneCapacity;
import slotledger.rules.internal.ddr5.OneChipWidth;
import slotledger.rules.internal.fill.BanksFilled;
import slotledger.rules.internal.fill.ChannelsEqual;
import slotledger.rules.internal.fill.EmptySockets;
import slotledger.rules.internal.fill.FillOrderHolds;
import slotledger.rules.internal.fill.FillTableHolds;
import slotledger.rules.internal.fill.FirstOfChannelFirst;
import slotledger.rules.internal.fill.LargestFirst;
import slotledger.rules.internal.fill.MatchedSets;
import slotledger.rules.internal.fill.ProcessorsEqual;
import slotledger.rules.internal.fill.RanksFirst;
import slotledger.rules.internal.kind.BufferingFits;
import slotledger.rules.internal.kind.EccFits;
import slotledger.rules.internal.kind.EccUnmixed;
import slotledger.rules.internal.kind.FormFits;
import slotledger.rules.internal.kind.GenerationFits;
import slotledger.rules.internal.kind.GradeAllowed;
import slotledger.rules.internal.kind.OneBuffering;
import slotledger.rules.internal.kind.OneGeneration;
import slotledger.rules.internal.kind.OneVoltage;
import slotledger.rules.internal.kind.VoltageFits;
import slotledger.rules.internal.limits.Addressable;
import slotledger.rules.internal.limits.LargestModule;
import slotledger.rules.internal.limits.LargestTotal;
import slotledger.rules.internal.limits.ProcessorTotal;
import slotledger.rules.internal.limits.SmallestModule;
import slotledger.rules.internal.limits.SystemUses;
import slotledger.rules.internal.lowpower.SolderedOrLpcamm;
import slotledger.rules.internal.rate.MixedLatencies;
import slotledger.rules.internal.rate.MixedRates;
import slotledger.rules.internal.rdram.BanksOneSpeed;
import slotledger.rules.internal.rdram.BanksWhole;
import slotledger.rules.internal.rdram.ChannelChips;
import slotledger.rules.internal.rdram.PairsAlike;
import slotledger.rules.internal.rdram.RimmAccessTime;
import slotledger.rules.internal.rdram.RimmChipsAddUp;
import slotledger.rules.internal.rdram.RimmEcc;
import slotledger.rules.internal.rdram.RimmHeat;
import slotledger.rules.internal.rdram.SocketsFilled;
import slotledger.rules.internal.sdr.BusGrade;
import slotledger.rules.internal.sdr.RegisteredWhereSaid;
import slotledger.rules.internal.sdr.SdrChips;
import slotledger.rules.internal.server.ChannelsAlike;
import slotledger.rules.internal.server.RedundancyHolds;
import slotledger.rules.internal.slots.AbsentProcessor;
import slotledger.rules.internal.slots.DeadConnector;
import slotledger.rules.internal.slots.SlotDescribed;
import slotledger.rules.internal.slots.SolderedStays;
import slotledger.rules.internal.slots.SomeMemory;
import slotledger.rules.internal.slots.UnreadSlot;
import slotledger.rules.spi.MemoryRule;

/** The rules of this bundle, for use without a service registry. */
public final class StandardRuleList {

    /** How many there are; the service of all rules waits for so many. */
    public static final int COUNT = 65;

    private StandardRuleList() {
    }

    public static List<MemoryRule> create() {
        return List.of(
                new ChannelRanksFit(),
                new ChipSizeFits(),
                new ChipWidthFits(),
                new ChipsAddUp(),
                new ModuleRanksFit(),
                new HighDensity(),
                new Supply400(),
                new DoubleSidedX16(),
                new FullyBuffered(),
                new Ddr3Chips(),
                new LowVoltageUnsaid(),
                new ThirdBesideQuadRank(),
                new TwoCapacities(),
                new AlikeInChannel(),
                new OneCapacity(),
                new OneChipWidth(),
                new BanksFilled(),
                new ChannelsEqual(),
                new EmptySockets(),
                new FillOrderHolds(),
                new FillTableHolds(),
                new FirstOfChannelFirst(),
                new LargestFirst(),
                new MatchedSets(),
                new ProcessorsEqual(),
                new RanksFirst(),
                new BufferingFits(),
                new EccFits(),
                new EccUnmixed(),
                new FormFits(),
                new GenerationFits(),
                new GradeAllowed(),
                new OneBuffering(),
                new OneGeneration(),
                new OneVoltage(),
                new VoltageFits(),
                new Addressable(),
                new LargestModule(),
                new LargestTotal(),
                new ProcessorTotal(),
                new SmallestModule(),
                new SystemUses(),
                new SolderedOrLpcamm(),
                new MixedLatencies(),
                new MixedRates(),
                new BusGrade(),
                new SdrChips(),
                new RegisteredWhereSaid(),
                new BanksOneSpeed(),
                new BanksWhole(),
                new ChannelChips(),
                new PairsAlike(),
                new RimmAccessTime(),
                new RimmChipsAddUp(),
                new RimmEcc(),
                new RimmHeat(),
                new SocketsFilled(),
                new ChannelsAlike(),
                new RedundancyHolds(),
                new AbsentProcessor(),
                new DeadConnector(),
                new SlotDescribed(),
                new SolderedStays(),
                new SomeMemory(),
                new UnreadSlot());
    }
}
