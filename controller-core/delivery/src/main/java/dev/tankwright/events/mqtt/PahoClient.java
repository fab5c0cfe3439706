package dev.tankwright.events.mqtt;

import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.ScheduledExecutorPingSender;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

/**
 * One Paho client object for one connection, with what it lacks: daemon threads, and an end that
 * always comes.
 *
 * <p>The library's own forced disconnect waits for its reader, which waits for the socket; it can
 * wait for ever on a silent peer. So the socket is closed first, and the tidying has its own
 * thread.
 */
public final class PahoClient {
  // connect or disconnect, reader, writer, callbacks, ping: five tasks that live side by side
  private static final int THREADS = 5;
  private static final long TIDY_SECONDS = 5;

  private final OpenSockets sockets = new OpenSockets();
  private final BrokerAccess access;
  private final ScheduledExecutorService executor;
  private final MqttAsyncClient client;
  private final String name;
  private final AtomicBoolean abandoned = new AtomicBoolean();

  /**
   * Makes the client without connecting it.
   *
   * @throws MqttException if the library refuses address or client id
   */
  public PahoClient(BrokerAccess access, String clientId) throws MqttException {
    this.access = access;
    name = "mqtt " + clientId;
    ScheduledThreadPoolExecutor pool = new ScheduledThreadPoolExecutor(THREADS, daemons(name));
    pool.setRemoveOnCancelPolicy(true);
    executor = pool;
    client =
        new MqttAsyncClient(
            access.uri().libraryAddress(),
            clientId,
            new MemoryPersistence(),
            new ScheduledExecutorPingSender(executor),
            executor);
  }

  private static ThreadFactory daemons(String name) {
    return task -> {
      Thread thread = new Thread(task, name);
      thread.setDaemon(true);
      return thread;
    };
  }

  /** The library's client; its callbacks may only enqueue. */
  public MqttAsyncClient library() {
    return client;
  }

  /**
   * Options that are always right here: MQTT 3.1.1, no automatic reconnect, a socket we can close,
   * the host's name verified, the credentials of this access.
   */
  public MqttConnectOptions options() {
    MqttConnectOptions options = new MqttConnectOptions();
    options.setMqttVersion(MqttConnectOptions.MQTT_VERSION_3_1_1);
    options.setAutomaticReconnect(false);
    options.setSocketFactory(
        access.uri().encrypted()
            ? new TlsSockets(sockets, access.tls())
            : new PlainSockets(sockets));
    options.setHttpsHostnameVerificationEnabled(true);
    access
        .credentials()
        .ifPresent(
            known -> {
              options.setUserName(known.user());
              options.setPassword(known.password());
            });
    options.setExecutorServiceTimeout(1);
    return options;
  }

  /**
   * Disconnects politely if that can be done quickly, and cuts the connection in any case. What the
   * broker has not been told of by then it keeps, as far as the session lasts.
   *
   * @param patienceMillis how long it may take, ms, above 0
   */
  public void leave(long patienceMillis) {
    try {
      if (client.isConnected()) {
        client.disconnect(patienceMillis).waitForCompletion(patienceMillis);
      }
    } catch (MqttException e) {
      // the broker is gone already; there is nobody to be polite to
    } finally {
      abandon();
    }
  }

  /**
   * Cuts the connection and returns; what the library leaves behind is tidied on a daemon thread.
   */
  public void abandon() {
    if (abandoned.compareAndSet(false, true)) {
      client.setCallback(null);
      sockets.closeAll();
      daemons(name + " tidy").newThread(this::tidy).start();
    }
  }

  private void tidy() {
    try {
      sockets.awaitSpoken(TIDY_SECONDS, TimeUnit.SECONDS);
      client.disconnectForcibly(0, 1, false);
    } catch (MqttException e) {
      // it was not connected, which is what is wanted
    } catch (InterruptedException e) {
      // nobody interrupts this thread; if somebody did, it would be time to end
    }
    try {
      client.close(true);
    } catch (MqttException e) {
      // it was closed already, which is what is wanted
    } finally {
      executor.shutdownNow();
    }
  }
}
