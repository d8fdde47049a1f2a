// Records taps on a clamped plate, or takes them from a file, and shows what the service finds.
(() => {
  'use strict';
  const seconds = 4;
  const lowest = 80;
  const highest = 8000;
  const at = (id) => document.getElementById(id);
  const form = at('tap');
  const state = at('state');
  const say = (what) => { state.textContent = state.dataset[what] || what; };
  const busy = (on) => { at('record').disabled = on; at('file').disabled = on; };

  const record = async () => {
    if (!navigator.mediaDevices || !window.AudioWorkletNode) return say('noMicrophone');
    let microphone;
    try {
      // What makes speech pleasant would change how a note dies away.
      microphone = await navigator.mediaDevices.getUserMedia({
        audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false },
      });
    } catch (refused) {
      return say('notAllowed');
    }
    const audio = new AudioContext();
    const pieces = [];
    let count = 0;
    try {
      await audio.audioWorklet.addModule('/look/tap-recorder.js');
      await audio.resume();
      const recorder = new AudioWorkletNode(audio, 'tap-recorder');
      say('recording');
      await new Promise((done) => {
        recorder.port.onmessage = (piece) => {
          pieces.push(piece.data);
          count += piece.data.length;
          if (count >= seconds * audio.sampleRate) done();
        };
        audio.createMediaStreamSource(microphone).connect(recorder);
      });
    } finally {
      for (const track of microphone.getTracks()) track.stop();
      audio.close();
    }
    const samples = new Float32Array(count);
    let place = 0;
    for (const piece of pieces) {
      samples.set(piece, place);
      place += piece.length;
    }
    return send(wav(samples, audio.sampleRate), samples, audio.sampleRate);
  };

  // RIFF, one channel of 16 bits.
  const wav = (samples, rate) => {
    const view = new DataView(new ArrayBuffer(44 + 2 * samples.length));
    const text = (place, letters) => {
      for (let i = 0; i < letters.length; i++) view.setUint8(place + i, letters.charCodeAt(i));
    };
    text(0, 'RIFF');
    view.setUint32(4, 36 + 2 * samples.length, true);
    text(8, 'WAVEfmt ');
    view.setUint32(16, 16, true);
    view.setUint16(20, 1, true);
    view.setUint16(22, 1, true);
    view.setUint32(24, rate, true);
    view.setUint32(28, 2 * rate, true);
    view.setUint16(32, 2, true);
    view.setUint16(34, 16, true);
    text(36, 'data');
    view.setUint32(40, 2 * samples.length, true);
    for (let i = 0; i < samples.length; i++) {
      view.setInt16(44 + 2 * i, Math.max(-1, Math.min(1, samples[i])) * 32767, true);
    }
    return view.buffer;
  };

  const fromFile = async (file) => {
    const bytes = await file.arrayBuffer();
    let sound = null;
    try {
      const audio = new AudioContext();
      sound = await audio.decodeAudioData(bytes.slice(0));
      audio.close();
    } catch (unreadable) { /* the service says what is wrong with it */ }
    return send(bytes, sound && sound.getChannelData(0), sound && sound.sampleRate);
  };

  const send = async (bytes, samples, rate) => {
    say('reading');
    at('found').hidden = true;
    at('next').hidden = true;
    const token = form.querySelector('input[name=_csrf]');
    const most = Math.min(highest, rate ? Math.floor(0.45 * rate) : highest);
    let report;
    try {
      const answer = await fetch(`${form.action}?lowest=${lowest}&highest=${most}`, {
        method: 'POST',
        headers: Object.assign(
          { 'Content-Type': 'audio/wav', Accept: 'application/json, application/problem+json' },
          token ? { 'X-XSRF-TOKEN': token.value } : {}),
        body: bytes,
      });
      report = await answer.json();
      if (!answer.ok) {
        draw(samples, rate, most);
        return say(report.detail);
      }
    } catch (away) {
      return say('noAnswer');
    }
    const { measuredNote: note, measuredDamping: damping } = report;
    draw(samples, rate, most, (note.low + note.high) / 2);
    at('note').textContent = `${note.low} to ${note.high} ${note.unit}`;
    at('damping').textContent = `${damping.low} to ${damping.high}`;
    at('taps').textContent = report.taps;
    at('found').hidden = false;
    at('next').hidden = false;
    return say('found');
  };

  // How loud each frequency is in the recording, both scales by ratio (Goertzel 1958).
  const draw = (samples, rate, most, note) => {
    const canvas = at('spectrum');
    canvas.hidden = !samples;
    if (!samples) return;
    const points = 330;
    const loud = [];
    for (let i = 0; i < points; i++) {
      const turn = 2 * Math.cos(2 * Math.PI * lowest * (most / lowest) ** (i / (points - 1)) / rate);
      let one = 0;
      let two = 0;
      for (const sample of samples) {
        const next = sample + turn * one - two;
        two = one;
        one = next;
      }
      loud.push(Math.log10(Math.max(1e-12, one * one + two * two - turn * one * two)));
    }
    const top = Math.max(...loud);
    // One dot of the canvas for one of the screen, so that letters keep their size.
    const dots = window.devicePixelRatio;
    canvas.width = canvas.clientWidth * dots;
    canvas.height = canvas.clientHeight * dots;
    const { width, height } = canvas;
    const foot = height - 22 * dots;
    const x = (hz) => width * Math.log(hz / lowest) / Math.log(most / lowest);
    const y = (power) => foot * Math.min(1, (top - power) / 6 * 0.92 + 0.04);
    const ink = getComputedStyle(canvas);
    const pen = canvas.getContext('2d');
    pen.clearRect(0, 0, width, height);
    pen.font = `${13 * dots}px ${ink.fontFamily}`;
    pen.fillStyle = ink.color;
    pen.strokeStyle = ink.borderTopColor;
    pen.lineWidth = dots;
    pen.textAlign = 'center';
    for (const hz of [100, 200, 500, 1000, 2000, 5000]) {
      if (hz >= most) break;
      pen.beginPath();
      pen.moveTo(x(hz), 0);
      pen.lineTo(x(hz), foot);
      pen.stroke();
      pen.fillText(hz === 5000 ? '5000 Hz' : hz, x(hz), height - 6 * dots);
    }
    pen.strokeStyle = ink.color;
    pen.lineWidth = 1.5 * dots;
    pen.beginPath();
    loud.forEach((power, i) => pen.lineTo(width * i / (points - 1), y(power)));
    pen.stroke();
    if (!note) return;
    pen.strokeStyle = ink.outlineColor;
    pen.setLineDash([6 * dots, 4 * dots]);
    pen.beginPath();
    pen.moveTo(x(note), 0);
    pen.lineTo(x(note), foot);
    pen.stroke();
    pen.setLineDash([]);
  };

  const work = async (job) => {
    busy(true);
    try {
      await job();
    } finally {
      busy(false);
      at('file').value = '';
    }
  };
  form.addEventListener('submit', (e) => {
    e.preventDefault();
    work(record);
  });
  at('file').addEventListener('change', () => {
    const [file] = at('file').files;
    if (file) work(() => fromFile(file));
  });
})();
