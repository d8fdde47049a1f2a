// Hands on what the microphone hears, a piece at a time.
class TapRecorder extends AudioWorkletProcessor {
  process(inputs) {
    if (inputs[0].length > 0) this.port.postMessage(inputs[0][0].slice());
    return true;
  }
}
registerProcessor('tap-recorder', TapRecorder);
