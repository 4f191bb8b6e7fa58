package slotledger.serve.internal;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import slotledger.model.machine.AssetTag;
import slotledger.model.work.Round;
import slotledger.serve.Pass;
import slotledger.serve.ServeException;
import slotledger.serve.internal.pass.OwnersFile;

/** The passes as a page to print, a sheet a round. */
final class PassPage {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm", Locale.ENGLISH);
    private static final String STYLE = "body{font:1.1rem/1.5 system-ui,'Liberation Sans',Arial,sans-serif;"
            + "max-width:40rem;margin:2rem auto;padding:0 1rem;color:#111;background:#fff}"
            + "section{break-after:page;border-bottom:1px solid #777;padding-bottom:1.5rem}"
            + "h1{font-size:1.6rem}svg{width:16rem;height:16rem}b.secret{font:bold 1.5rem monospace}"
            + "p,li{overflow-wrap:anywhere}ol{display:grid;grid-template-columns:repeat(4,1fr);gap:1rem;padding:0;"
            + "list-style:none}li{break-inside:avoid}li svg{display:block;width:100%;max-width:8rem;height:auto}";

    private PassPage() {
    }

    static void write(List<Pass> passes, List<Round> rounds, URI address, Path file) throws ServeException {
        StringBuilder page = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta name=\"referrer\" content=\"no-referrer\">\n<title>Passes for rounds</title>\n<style>" + STYLE
                + "</style>\n</head>\n<body>\n");
        for (Pass pass : passes) {
            pass.entry().ifPresent(entry -> sheet(page, pass, entry, address));
            rounds.stream().filter(round -> pass.entry().isPresent() && round.id().equals(pass.round()))
                    .forEach(round -> machines(page, round, address));
        }
        page.append("</body>\n</html>\n");
        Path target = file.toAbsolutePath();
        if (Files.exists(target)) {
            throw new ServeException("The file " + file + " is there already; it is not replaced. Name another.");
        }
        try {
            Path part = OwnersFile.createBeside(target);
            try {
                Files.writeString(part, page);
                Files.move(part, target);
            } finally {
                Files.deleteIfExists(part);
            }
        } catch (IOException problem) {
            throw new ServeException("The passes can't be written to " + file + ": " + problem.getMessage(), problem);
        }
    }

    private static void sheet(StringBuilder page, Pass pass, Pass.Entry entry, URI address) {
        page.append("<section>\n<h1>Round ").append(escaped(pass.round())).append("</h1>\n<p>")
                .append(escaped(pass.technician().isEmpty() ? "Technician: ____________________" : pass.technician()))
                .append(pass.machines() == 1 ? ", 1 machine</p>\n" : ", " + pass.machines() + " machines</p>\n");
        page.append(code(entry.code()));
        page.append("<p>Point the phone's camera at the code and open the link. Or open <b>").append(address)
                .append("</b> and type:</p>\n<p>Round <b class=\"secret\">").append(escaped(pass.round()))
                .append("</b><br>Secret <b class=\"secret\">").append(entry.secret())
                .append("</b></p>\n<p>It holds until ")
                .append(DAY.format(pass.expires().atZone(ZoneId.systemDefault())))
                .append(". Whoever has this sheet can enter; keep it like a key.</p>\n");
    }

    /** A code for each machine; there is no secret in it, so it may be cut out and stuck to the bag. */
    private static void machines(StringBuilder page, Round round, URI address) {
        page.append("<h2>Machines of round ").append(escaped(round.id()))
                .append("</h2>\n<p>Once the phone has entered, each code opens the page of its machine.</p>\n<ol>\n");
        for (AssetTag tag : round.machines()) {
            URI link = address.resolve("#m=" + URLEncoder.encode(tag.value(), StandardCharsets.UTF_8));
            page.append("<li>").append(PassCode.of(link).map(PassPage::code).orElse("<p>too long for a code</p>\n"))
                    .append("<b><bdi>").append(escaped(tag.value())).append("</bdi></b></li>\n");
        }
        page.append("</ol>\n</section>\n");
    }

    private static String code(List<List<Boolean>> rows) {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < rows.size(); y++) {
            for (int x = 0; x < rows.get(y).size(); x++) {
                if (rows.get(y).get(x)) {
                    path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                }
            }
        }
        return ("<svg role=\"img\" aria-label=\"code of the link\" viewBox=\"0 0 %d %d\" "
                + "shape-rendering=\"crispEdges\"><path d=\"%s\"/></svg>\n")
                .formatted(rows.get(0).size(), rows.size(), path);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
