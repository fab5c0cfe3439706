package dev.tankwright.delivery;

import dev.tankwright.events.mqtt.BrokerUri;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.FutureTask;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.management.MBeanServer;
import javax.management.MBeanServerFactory;
import org.apache.activemq.artemis.core.remoting.impl.netty.NettyAcceptor;
import org.apache.activemq.artemis.core.server.ActiveMQServer;
import org.apache.activemq.artemis.core.server.ServiceRegistry;
import org.apache.activemq.artemis.core.server.impl.ActiveMQServerImpl;
import org.apache.activemq.artemis.core.server.impl.ServiceRegistryImpl;
import org.apache.activemq.artemis.spi.core.remoting.Acceptor;

/**
 * An MQTT 3.1.1 broker inside this process, on a free port of the loopback address.
 *
 * <p>It keeps retained messages, retained last wills and persistent sessions in memory for as long
 * as it runs; nothing is written to disk. Whoever can reach the loopback address can use it. {@link
 * #close} ends all its threads; two of the library's own are no daemons, so a process that does not
 * close it must end by {@code System.exit}.
 */
public final class EmbeddedBroker implements AutoCloseable {
  private static final int WORKERS = 3;
  private static final long START_SECONDS = 30;

  private final ActiveMQServer server;
  private final List<ExecutorService> executors;
  private final BrokerUri uri;
  private final AtomicBoolean closed = new AtomicBoolean();

  private EmbeddedBroker(ActiveMQServer server, List<ExecutorService> executors, BrokerUri uri) {
    this.server = server;
    this.executors = executors;
    this.uri = uri;
  }

  /**
   * Starts a broker; it accepts connections when this returns.
   *
   * @throws IOException if it cannot start, with the reason
   */
  public static EmbeddedBroker start() throws IOException {
    ExecutorService workers = workers();
    ScheduledExecutorService timer = timer();
    List<ExecutorService> executors = List.of(workers, timer);
    // an own, empty one: the server would load the platform's with all its beans, unused
    MBeanServer unused = MBeanServerFactory.newMBeanServer();
    ActiveMQServer server =
        new ActiveMQServerImpl(
            BrokerSettings.create(), unused, null, null, services(workers, timer));
    try {
      startByDaemon(server);
      return new EmbeddedBroker(server, executors, listening(server));
    } catch (IOException e) {
      executors.forEach(ExecutorService::shutdownNow);
      throw e;
    }
  }

  /** Where it listens. */
  public BrokerUri uri() {
    return uri;
  }

  /** Cuts all connections, forgets everything and ends its threads. */
  @Override
  public void close() {
    if (!closed.compareAndSet(false, true)) {
      return;
    }
    try {
      server.stop();
    } catch (Exception e) {
      throw new IllegalStateException("the embedded broker at " + uri + " did not stop", e);
    } finally {
      executors.forEach(ExecutorService::shutdownNow);
    }
  }

  /**
   * Starts on a thread that is a daemon, because the threads the server makes itself inherit it.
   */
  private static void startByDaemon(ActiveMQServer server) throws IOException {
    FutureTask<Void> start =
        new FutureTask<>(
            () -> {
              server.start();
              return null;
            });
    daemons("broker start").newThread(start).start();
    try {
      start.get(START_SECONDS, TimeUnit.SECONDS);
    } catch (ExecutionException | TimeoutException e) {
      throw new IOException("the embedded broker did not start: " + e, e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while the embedded broker was starting");
    }
  }

  private static BrokerUri listening(ActiveMQServer server) throws IOException {
    Acceptor acceptor = server.getRemotingService().getAcceptor(BrokerSettings.ACCEPTOR);
    if (acceptor instanceof NettyAcceptor netty && netty.getActualPort() > 0) {
      return new BrokerUri(BrokerSettings.HOST, netty.getActualPort());
    }
    throw new IOException(
        "the embedded broker did not open a port on "
            + BrokerSettings.HOST
            + "; free ports must be available on the loopback address");
  }

  private static ServiceRegistry services(ExecutorService workers, ScheduledExecutorService timer) {
    ServiceRegistry services = new ServiceRegistryImpl();
    services.setExecutorService(workers);
    services.setIOExecutorService(workers);
    services.setPageExecutorService(workers);
    services.setScheduledExecutorService(timer);
    return services;
  }

  private static ScheduledExecutorService timer() {
    ScheduledThreadPoolExecutor timer = new ScheduledThreadPoolExecutor(1, daemons("broker timer"));
    timer.setRemoveOnCancelPolicy(true); // the server asks for it
    return timer;
  }

  private static ExecutorService workers() {
    return new ThreadPoolExecutor(
        WORKERS, WORKERS, 1, TimeUnit.MINUTES, new LinkedBlockingQueue<>(), daemons("broker"));
  }

  private static ThreadFactory daemons(String name) {
    return task -> {
      Thread thread = new Thread(task, name);
      thread.setDaemon(true);
      return thread;
    };
  }
}
