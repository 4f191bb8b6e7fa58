package slotledger.serve.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.Key;
import java.security.KeyStore;
import java.time.Clock;
import java.time.Duration;
import java.util.Base64;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.serve.PhoneServer;
import slotledger.serve.ServeException;
import slotledger.serve.ServeRequest;
import slotledger.serve.ServeRequest.Certificate;
import slotledger.serve.internal.http.Limits;

/** With a certificate that Java's own keytool makes. */
class EncryptedTest {

    private static final String PASSWORD = "open sesame";

    @TempDir
    private Path folder;

    private Path store;

    @BeforeEach
    void makeACertificate() throws Exception {
        store = folder.resolve("server.p12");
        Process keytool = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                "-genkeypair", "-alias", "server", "-keyalg", "EC", "-dname", "CN=localhost", "-ext",
                "san=dns:localhost", "-validity", "2", "-storetype", "PKCS12", "-keystore", store.toString(),
                "-storepass", PASSWORD).redirectErrorStream(true).start();
        String said = new String(keytool.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(keytool.waitFor(20, TimeUnit.SECONDS) && keytool.exitValue() == 0, said);
    }

    @Test
    void aRoundIsServedEncryptedAndItsCookieGoesNowhereElse() throws Exception {
        enters(new Certificate(store, Optional.empty(), PASSWORD));
    }

    @Test
    void aCertificateInPemServesAsWell() throws Exception {
        KeyStore keys = keys();
        Key key = keys.getKey("server", PASSWORD.toCharArray());
        Path both = Files.writeString(folder.resolve("both.pem"), pem("CERTIFICATE",
                keys.getCertificate("server").getEncoded()) + pem("PRIVATE KEY", key.getEncoded()));
        Path alone = Files.writeString(folder.resolve("alone.pem"),
                pem("CERTIFICATE", keys.getCertificate("server").getEncoded()));
        Path keyFile = Files.writeString(folder.resolve("key.pem"), pem("PRIVATE KEY", key.getEncoded()));
        enters(new Certificate(both, Optional.empty(), ""));
        enters(new Certificate(alone, Optional.of(keyFile), ""));
    }

    @Test
    void aCertificateThatCantBeUsedIsNamedWithoutItsPassword() throws Exception {
        Path half = Files.writeString(folder.resolve("half.pem"),
                pem("CERTIFICATE", keys().getCertificate("server").getEncoded()));
        for (Certificate wrong : new Certificate[] {new Certificate(store, Optional.empty(), "sesame close"),
            new Certificate(half, Optional.empty(), ""),
            new Certificate(folder.resolve("none.p12"), Optional.empty(), "")}) {
            ServeException problem = assertThrows(ServeException.class, () -> start(wrong));
            assertTrue(problem.getMessage().contains(wrong.file().toString()), problem.getMessage());
            assertFalse(problem.getMessage().contains("sesame close"), problem.getMessage());
        }
    }

    private void enters(Certificate certificate) throws Exception {
        try (PhoneServer server = start(certificate)) {
            assertEquals("https", server.address().getScheme());
            String secret = server.passes().get(0).entry().map(entry -> entry.secret()).orElseThrow();
            Phone phone = new Phone(client(), server.address());
            HttpResponse<String> answer = phone.enter("R1", secret);
            assertEquals(200, answer.statusCode(), answer.body());
            String cookie = answer.headers().firstValue("Set-Cookie").orElse("");
            assertTrue(cookie.startsWith("__Host-") && cookie.contains("; Secure"), cookie);
            assertEquals(200, phone.round().statusCode());
            URI plain = URI.create("http://localhost:" + server.address().getPort());
            assertThrows(IOException.class, () -> new Phone(plain).get("/api/round"));
        }
    }

    private PhoneServer start(Certificate certificate) throws ServeException {
        SmallWork work = new SmallWork();
        Path project = folder.resolve("project-" + System.nanoTime());
        return new DefaultPhoneService(work, work, Limits.USUAL, Clock.systemUTC()).start(new ServeRequest(
                project, Optional.empty(), 0, Optional.of(certificate), Duration.ofDays(1), Set.of()));
    }

    private HttpClient client() throws Exception {
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("server", keys().getCertificate("server"));
        trust.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return HttpClient.newBuilder().sslContext(context).build();
    }

    private KeyStore keys() throws Exception {
        KeyStore keys = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(store)) {
            keys.load(in, PASSWORD.toCharArray());
        }
        return keys;
    }

    private static String pem(String kind, byte[] bytes) {
        return "-----BEGIN " + kind + "-----\n" + Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(bytes)
                + "\n-----END " + kind + "-----\n";
    }
}
