package dev.tankwright.delivery;

import java.util.HashMap;
import java.util.Map;
import org.apache.activemq.artemis.api.core.TransportConfiguration;
import org.apache.activemq.artemis.core.config.Configuration;
import org.apache.activemq.artemis.core.config.impl.ConfigurationImpl;
import org.apache.activemq.artemis.core.remoting.impl.netty.NettyAcceptorFactory;
import org.apache.activemq.artemis.core.remoting.impl.netty.TransportConstants;
import org.apache.activemq.artemis.core.server.JournalType;
import org.apache.activemq.artemis.core.settings.impl.AddressFullMessagePolicy;
import org.apache.activemq.artemis.core.settings.impl.AddressSettings;

/**
 * What the embedded broker is told: as little as can be, in memory only, quick to start and stop.
 */
final class BrokerSettings {
  static final String HOST = "127.0.0.1";
  static final String ACCEPTOR = "mqtt";

  private BrokerSettings() {}

  static Configuration create() {
    Configuration settings = new ConfigurationImpl();
    settings.setName("tankwright");
    settings.setPersistenceEnabled(false);
    settings.setSecurityEnabled(false);
    settings.setJMXManagementEnabled(false);
    // the kind that probes no native library; with persistence off it is never opened
    settings.setJournalType(JournalType.NIO);
    settings.setMessageCounterEnabled(false);
    settings.setCriticalAnalyzer(false);
    settings.setSuppressSessionNotifications(true);
    // without files there is no disk to watch
    settings.setMaxDiskUsage(-1);
    settings.addAddressSetting("#", everyAddress());
    settings.addAcceptorConfiguration(acceptor());
    return settings;
  }

  private static AddressSettings everyAddress() {
    return new AddressSettings()
        // when memory is short publishers wait; the default would page messages out to files
        .setAddressFullMessagePolicy(AddressFullMessagePolicy.BLOCK)
        // a message waits for its reader however often the reader drops out
        .setMaxDeliveryAttempts(-1);
  }

  private static TransportConfiguration acceptor() {
    Map<String, Object> params = new HashMap<>();
    params.put(TransportConstants.HOST_PROP_NAME, HOST);
    params.put(TransportConstants.PORT_PROP_NAME, "0");
    params.put(TransportConstants.PROTOCOLS_PROP_NAME, "MQTT");
    params.put(TransportConstants.USE_EPOLL_PROP_NAME, "false");
    params.put(TransportConstants.USE_KQUEUE_PROP_NAME, "false");
    params.put(TransportConstants.REMOTING_THREADS_PROPNAME, "2");
    params.put(TransportConstants.QUIET_PERIOD, "0");
    params.put(TransportConstants.SHUTDOWN_TIMEOUT, "100");
    return new TransportConfiguration(
        NettyAcceptorFactory.class.getName(), params, ACCEPTOR, Map.of());
  }
}
