package dev.sunthread.benchmark;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.DriverPropertyInfo;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;

/** PostgreSQL's driver, which on request counts how often each statement is executed and how long that takes. */
public final class CountingDriver implements java.sql.Driver {

    private static final boolean COUNTING = Boolean.getBoolean("sunthread.statements");
    private static final int MOST = 60;
    private static final Map<String, Count> COUNTS = new ConcurrentHashMap<>();

    private final org.postgresql.Driver driver = new org.postgresql.Driver();

    /** How often a statement was executed, and for how long in nanoseconds. */
    private record Count(long times, long nanos) {

        Count and(Count other) {
            return new Count(times + other.times, nanos + other.nanos);
        }
    }

    @Override
    public @Nullable Connection connect(String url, Properties info) throws SQLException {
        Connection connection = driver.connect(url, info);
        return connection == null || !COUNTING ? connection : counted(connection);
    }

    private static Connection counted(Connection connection) {
        return proxy(Connection.class, (method, arguments) -> {
            Object made = method.invoke(connection, arguments);
            return made instanceof PreparedStatement statement && arguments != null
                    ? counted(statement, (String) arguments[0])
                    : made;
        });
    }

    private static PreparedStatement counted(PreparedStatement statement, String sql) {
        return proxy(PreparedStatement.class, (method, arguments) -> {
            long begin = System.nanoTime();
            Object made = method.invoke(statement, arguments);
            if (method.getName().startsWith("execute")) {
                COUNTS.merge(sql, new Count(1, System.nanoTime() - begin), Count::and);
            }
            return made;
        });
    }

    private interface Call {
        @Nullable
        Object on(Method method, @Nullable Object[] arguments) throws ReflectiveOperationException;
    }

    private static <T> T proxy(Class<T> type, Call call) {
        return type.cast(Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, (self, method, args) -> {
            try {
                return call.on(method, args);
            } catch (InvocationTargetException e) {
                throw e.getCause();
            }
        }));
    }

    /** Prints what was executed since the last report, the longest in all first, for so many envelopes. */
    static void report(long envelopes) {
        if (!COUNTING) {
            return;
        }
        Count all = COUNTS.values().stream().reduce(new Count(0, 0), Count::and);
        System.out.printf(
                Locale.ROOT,
                "%.1f statements an envelope, %.2f ms%n",
                (double) all.times / envelopes,
                all.nanos / 1e6 / envelopes);
        COUNTS.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(
                        Comparator.comparing(Count::nanos).reversed()))
                .limit(MOST)
                .forEach(one -> System.out.printf(
                        Locale.ROOT,
                        "%,9d times %,7.0f us  %s%n",
                        one.getValue().times,
                        one.getValue().nanos / 1e3 / one.getValue().times,
                        one.getKey().replaceAll("\\s+", " ")));
        COUNTS.clear();
    }

    @Override
    public boolean acceptsURL(String url) {
        return driver.acceptsURL(url);
    }

    @Override
    public DriverPropertyInfo[] getPropertyInfo(String url, Properties info) {
        return driver.getPropertyInfo(url, info);
    }

    @Override
    public int getMajorVersion() {
        return driver.getMajorVersion();
    }

    @Override
    public int getMinorVersion() {
        return driver.getMinorVersion();
    }

    @Override
    public boolean jdbcCompliant() {
        return driver.jdbcCompliant();
    }

    @Override
    public Logger getParentLogger() {
        return Logger.getGlobal();
    }
}
