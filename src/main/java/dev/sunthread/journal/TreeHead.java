package dev.sunthread.journal;

import java.security.MessageDigest;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HexFormat;

/**
 * The root of the Merkle tree (RFC 9162, section 2.1.1) over the leaf hashes of entries in the order of their positions,
 * in memory that grows with the logarithm of their number.
 */
final class TreeHead {

    private static final byte NODE = 1;

    /** A whole subtree, by the number of its leaves and its root. */
    private record Subtree(long leaves, byte[] root) {}

    private final Deque<Subtree> whole = new ArrayDeque<>();

    /** Adds the next leaf by its hash. */
    void add(byte[] leafHash) {
        Subtree last = new Subtree(1, leafHash);
        while (!whole.isEmpty() && whole.getLast().leaves() == last.leaves()) {
            last = joined(whole.removeLast(), last);
        }
        whole.addLast(last);
    }

    /** The root over all leaves so far, in hexadecimal. */
    String hex() {
        MessageDigest digest = RawLine.sha256Digest();
        if (whole.isEmpty()) {
            return HexFormat.of().formatHex(digest.digest());
        }
        Deque<Subtree> left = new ArrayDeque<>(whole);
        Subtree root = left.removeLast();
        while (!left.isEmpty()) {
            root = joined(left.removeLast(), root);
        }
        return HexFormat.of().formatHex(root.root());
    }

    private static Subtree joined(Subtree left, Subtree right) {
        MessageDigest digest = RawLine.sha256Digest();
        digest.update(NODE);
        digest.update(left.root());
        return new Subtree(left.leaves() + right.leaves(), digest.digest(right.root()));
    }
}
