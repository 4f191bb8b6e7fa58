package slotledger.serve.internal.pass;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Locale;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;

/**
 * Makes secrets and what is kept of them. A secret has 60 random bits, written in the 32 letters and digits of
 * Crockford's Base32, which leave out what is easily misread. It is kept as PBKDF2 (RFC 8018) only, so that whoever
 * gets hold of the file can't enter with what is in it.
 */
final class Secrets {

    private static final String LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final int LENGTH = 12;
    private static final int GROUP = 4;
    private static final int LONGEST = 64;
    private static final int SALT_BYTES = 16;
    private static final int TOKEN_BYTES = 32;
    /** On top of 60 random bits; some 30 ms on a desktop of 2020. */
    private static final int ROUNDS = 100_000;
    private static final int HASH_BITS = 256;

    private final SecureRandom random = new SecureRandom();

    /** "7KQM-03WD-XR5T". */
    String secret() {
        StringBuilder secret = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            secret.append(i > 0 && i % GROUP == 0 ? "-" : "").append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return secret.toString();
    }

    String salt() {
        return encoded(bytes(SALT_BYTES));
    }

    /** What a browser shows instead of the secret from then on. */
    String token() {
        return encoded(bytes(TOKEN_BYTES));
    }

    /** What is kept of a secret; takes time on purpose. */
    static String hash(String secret, String salt) {
        PBEKeySpec key = new PBEKeySpec(plain(secret).toCharArray(), Base64.getUrlDecoder().decode(salt), ROUNDS,
                HASH_BITS);
        try {
            return encoded(SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256").generateSecret(key).getEncoded());
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("Every Java must know PBKDF2 with SHA-256.", impossible);
        } finally {
            key.clearPassword();
        }
    }

    /** What is kept of a token, which has so many random bits that a plain hash does. */
    static String hash(String token) {
        try {
            return encoded(MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java must know SHA-256.", impossible);
        }
    }

    /** Compares in a time that doesn't tell how far two texts agree. */
    static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }

    /** Small letters, blanks, hyphens and the letters that are mistaken for digits make no difference. */
    private static String plain(String secret) {
        String typed = secret.length() > LONGEST ? secret.substring(0, LONGEST) : secret;
        return typed.toUpperCase(Locale.ROOT).replaceAll("[\\s-]", "").replace('O', '0').replaceAll("[IL]", "1");
    }

    private byte[] bytes(int count) {
        byte[] bytes = new byte[count];
        random.nextBytes(bytes);
        return bytes;
    }

    private static String encoded(byte[] bytes) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }
}
