package slotledger.rules.internal;

import java.util.List;
import slotledger.rules.internal.chips.ChannelRanksFit;
import slotledger.rules.internal.chips.ChipSizeFits;
import slotledger.rules.internal.chips.ChipWidthFits;
import slotledger.rules.internal.chips.ChipsAddUp;
import slotledger.rules.internal.chips.ModuleRanksFit;
import slotledger.rules.internal.ddr4.EightLogicalRanks;
import slotledger.rules.internal.ddr4.MixedChipWidths;
import slotledger.rules.internal.ddr4.OneDdr4Stacking;
import slotledger.rules.internal.ddr4.TwoCapacities;
import slotledger.rules.internal.ddr5.AlikeInChannel;
import slotledger.rules.internal.ddr5.KeyedSocket;
import slotledger.rules.internal.ddr5.NewChipSize;
import slotledger.rules.internal.ddr5.OneCapacity;
import slotledger.rules.internal.ddr5.OneCheckWidth;
import slotledger.rules.internal.ddr5.OneChipSize;
import slotledger.rules.internal.ddr5.OneChipWidth;
import slotledger.rules.internal.ddr5.OneDdr5Stacking;
import slotledger.rules.internal.ddr5.OneRankCount;
import slotledger.rules.internal.fill.ChannelsEqual;
import slotledger.rules.internal.fill.FillOrderHolds;
import slotledger.rules.internal.fill.FillTableHolds;
import slotledger.rules.internal.fill.FirstOfChannelFirst;
import slotledger.rules.internal.fill.LargestFirst;
import slotledger.rules.internal.fill.MatchedSets;
import slotledger.rules.internal.fill.ProcessorsEqual;
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
import slotledger.rules.internal.limits.LargestModule;
import slotledger.rules.internal.limits.LargestTotal;
import slotledger.rules.internal.limits.ProcessorTotal;
import slotledger.rules.internal.limits.SmallestModule;
import slotledger.rules.internal.limits.SystemUses;
import slotledger.rules.internal.lowpower.CammMounting;
import slotledger.rules.internal.lowpower.CammSite;
import slotledger.rules.internal.lowpower.SolderedChannel;
import slotledger.rules.internal.lowpower.SolderedOrLpcamm;
import slotledger.rules.internal.rate.MixedLatencies;
import slotledger.rules.internal.rate.MixedRates;
import slotledger.rules.internal.server.ChannelsAlike;
import slotledger.rules.internal.server.LogicalRanksFit;
import slotledger.rules.internal.server.ProcessorsAlike;
import slotledger.rules.internal.server.RanksFirst;
import slotledger.rules.internal.server.StackHeightFits;
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
    public static final int COUNT = 57;

    private StandardRuleList() {
    }

    public static List<MemoryRule> create() {
        return List.of(
                new ChannelRanksFit(),
                new ChipSizeFits(),
                new ChipWidthFits(),
                new ChipsAddUp(),
                new ModuleRanksFit(),
                new TwoCapacities(),
                new OneDdr4Stacking(),
                new MixedChipWidths(),
                new EightLogicalRanks(),
                new AlikeInChannel(),
                new OneCapacity(),
                new OneChipWidth(),
                new OneDdr5Stacking(),
                new OneChipSize(),
                new OneCheckWidth(),
                new OneRankCount(),
                new KeyedSocket(),
                new NewChipSize(),
                new ChannelsEqual(),
                new FillOrderHolds(),
                new FillTableHolds(),
                new FirstOfChannelFirst(),
                new LargestFirst(),
                new MatchedSets(),
                new ProcessorsEqual(),
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
                new LargestModule(),
                new LargestTotal(),
                new ProcessorTotal(),
                new SmallestModule(),
                new SystemUses(),
                new SolderedOrLpcamm(),
                new CammMounting(),
                new CammSite(),
                new SolderedChannel(),
                new MixedLatencies(),
                new MixedRates(),
                new ChannelsAlike(),
                new StackHeightFits(),
                new LogicalRanksFit(),
                new ProcessorsAlike(),
                new RanksFirst(),
                new AbsentProcessor(),
                new DeadConnector(),
                new SlotDescribed(),
                new SolderedStays(),
                new SomeMemory(),
                new UnreadSlot());
    }
}
