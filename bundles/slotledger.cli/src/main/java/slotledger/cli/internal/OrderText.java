package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.delivery.TradeWords;

/** How far an order has come, in words and as facts. */
final class OrderText {

    private OrderText() {
    }

    static void report(Answer.Builder answer, OrderStatus status) {
        answer.item("Order", "of plan " + status.number() + ", " + status.plan().spending().payable()
                + (status.ended() ? "; nothing more will come" : ""));
        answer.item("Approved", status.approval().map(each -> "by " + ((TradeEvent.Approved) each.event()).by()
                + " (entry " + each.entry() + ")").orElse("not yet"));
        status.suppliers().forEach(each -> answer.wrapped("Supplier", each.supplier() + ": " + words(each)));
        status.lines().forEach(line -> answer.wrapped("Line", words(line)));
        status.drawn().forEach(each -> answer.wrapped("Drawn", TradeWords.of(each)));
        answer.fact("plan", status.number());
        answer.fact("approved", status.approval().map(each -> ((TradeEvent.Approved) each.event()).by()).orElse(""));
        answer.fact("ended", status.ended());
        List<Object> lines = new ArrayList<>();
        status.lines().forEach(line -> lines.add(facts(line)));
        answer.fact("lines", lines);
    }

    private static String words(OrderStatus.AtSupplier supplier) {
        String sent = supplier.sent().map(day -> "sent on " + day).orElse("not sent yet");
        return sent + supplier.confirmed().map(said -> ", confirmed on " + said.day()
                + (said.number().isEmpty() ? "" : " as " + said.number())
                + said.expected().map(day -> ", expected on " + day).orElse("")).orElse("");
    }

    private static String words(OrderStatus.Line line) {
        StringBuilder text = new StringBuilder(line.purchase().offer().id() + ": " + line.good() + " of "
                + line.purchase().modules() + " good");
        count(text, line.wrong(), "wrong");
        count(text, line.dead(), "dead on arrival");
        count(text, line.missing(), "missing or to be replaced");
        count(text, line.untested(), "not tested yet");
        count(text, line.drawn(), "drawn");
        return text.toString();
    }

    private static void count(StringBuilder text, int modules, String what) {
        if (modules > 0) {
            text.append(", ").append(modules).append(' ').append(what);
        }
    }

    private static Map<String, Object> facts(OrderStatus.Line line) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("offer", line.purchase().offer().id());
        facts.put("ordered", line.purchase().modules());
        facts.put("good", line.good());
        facts.put("wrong", line.wrong());
        facts.put("dead", line.dead());
        facts.put("missing", line.missing());
        facts.put("untested", line.untested());
        facts.put("drawn", line.drawn());
        return facts;
    }
}
