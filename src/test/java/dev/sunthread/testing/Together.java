package dev.sunthread.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Lets several things happen at once. */
public final class Together {

    private Together() {}

    /** Does all of it in threads that begin together; gives the results in the order of the work. */
    public static <T> List<T> atOnce(List<Callable<T>> work) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(work.size());
        CyclicBarrier begin = new CyclicBarrier(work.size());
        List<Future<T>> running = new ArrayList<>();
        for (Callable<T> part : work) {
            running.add(threads.submit(() -> {
                begin.await();
                return part.call();
            }));
        }
        List<T> results = new ArrayList<>();
        for (Future<T> part : running) {
            results.add(part.get());
        }
        threads.shutdown();
        return results;
    }
}
