package dev.tankwright.delivery;

import java.util.concurrent.CountDownLatch;
import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.MqttCallback;
import org.eclipse.paho.client.mqttv3.MqttMessage;

/** The client's callbacks: they hand over and do nothing else, since work there can block it. */
record Arrivals(Inbox inbox, CountDownLatch lost) implements MqttCallback {
  @Override
  public void connectionLost(Throwable cause) {
    lost.countDown();
  }

  @Override
  public void messageArrived(String topic, MqttMessage message) {
    inbox.put(topic, message.getPayload());
  }

  @Override
  public void deliveryComplete(IMqttDeliveryToken token) {}
}
