package dev.sunthread.ledger;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.ResourceHolderSupport;
import org.springframework.transaction.support.ResourceHolderSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * What a transaction looked up that can't change until its end, so that it asks once: the number behind a code, or, of
 * a transaction that records alone, anything it forgets whenever it writes it itself.
 */
@Component
public class Remembered {

    private static final int MOST = 100_000;

    private static final class Memory extends ResourceHolderSupport {

        private final Map<String, Map<?, ?>> maps = new HashMap<>();

        @Override
        public void clear() {
            super.clear();
            maps.clear();
        }
    }

    private static final class Kept<K, V> extends LinkedHashMap<K, V> {

        @Override
        protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > MOST;
        }
    }

    /** The current transaction's memory of one thing, which drops the eldest; of no use outside a transaction. */
    @SuppressWarnings("unchecked")
    public <K, V> Map<K, V> of(String thing) {
        return (Map<K, V>) memory().maps.computeIfAbsent(thing, name -> new Kept<K, V>());
    }

    /** What a memory knows of each of these, the rest asked at once and kept; nothing of what the answer leaves out. */
    public static <K, V> Map<K, V> each(Map<K, V> memory, Collection<K> keys, Function<Set<K>, Map<K, V>> ask) {
        // apart from the memory, which may drop some of them for others
        Map<K, V> each = new HashMap<>();
        Set<K> unknown = new LinkedHashSet<>();
        for (K key : keys) {
            V value = memory.get(key);
            if (value == null) {
                unknown.add(key);
            } else {
                each.put(key, value);
            }
        }
        if (!unknown.isEmpty()) {
            Map<K, V> asked = ask.apply(unknown);
            memory.putAll(asked);
            each.putAll(asked);
        }
        return each;
    }

    /** Forgets everything, because what was looked up may have been taken back. */
    void forget() {
        memory().maps.clear();
    }

    private Memory memory() {
        Memory memory = (Memory) TransactionSynchronizationManager.getResource(this);
        if (memory == null) {
            memory = new Memory();
            if (TransactionSynchronizationManager.isSynchronizationActive()) {
                TransactionSynchronizationManager.bindResource(this, memory);
                TransactionSynchronizationManager.registerSynchronization(
                        new ResourceHolderSynchronization<>(memory, this) {});
            }
        }
        return memory;
    }
}
