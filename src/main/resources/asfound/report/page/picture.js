"use strict";
// The one-line: one sheet at a time, moved by scrolling, sized by zooming.
(function () {
  const plates = Array.from(document.querySelectorAll(".plate"));
  if (plates.length === 0) return;
  const choice = document.getElementById("sheet-choice");
  const key = document.getElementById("picture-key");
  const LEAST = 0.1, MOST = 4;
  let plate = plates[0];
  let scale = 1;

  function frame() { return plate.querySelector(".window"); }
  function picture() { return plate.querySelector(".picture"); }
  function natural() { return picture().viewBox.baseVal; }

  function zoom(to) {
    const view = frame();
    if (view === null) return;
    const next = Math.min(MOST, Math.max(LEAST, to));
    const x = (view.scrollLeft + view.clientWidth / 2) / scale, y = (view.scrollTop + view.clientHeight / 2) / scale;
    scale = next;
    picture().setAttribute("width", natural().width * scale);
    picture().setAttribute("height", natural().height * scale);
    view.scrollLeft = x * scale - view.clientWidth / 2;
    view.scrollTop = y * scale - view.clientHeight / 2;
  }

  function fitting() {
    if (frame() === null) return 1;
    return Math.min(1, (frame().clientWidth - 4) / natural().width);
  }

  function fit() { zoom(fitting()); }

  function turnTo(number) {
    plate = plates.find(p => p.id === "plate-" + number) || plates[0];
    for (const p of plates) p.hidden = p !== plate;
    choice.value = plate.id.slice("plate-".length);
    scale = 1;
    const whole = fitting();
    zoom(whole > 0.62 ? whole : 1);
    toTheSource();
  }

  // Begins where the supply does: what stands farthest left, in the middle of its height.
  function toTheSource() {
    const view = frame();
    if (view === null) return;
    const top = view.getBoundingClientRect().top - view.scrollTop;
    let first = null;
    for (const node of plate.querySelectorAll(".node")) {
      const box = node.getBoundingClientRect();
      if (first === null || box.left < first.left) first = box;
    }
    view.scrollLeft = 0;
    view.scrollTop = first === null ? 0 : first.top + first.height / 2 - top - view.clientHeight / 2;
  }

  function show(id) {
    const node = document.querySelector('.node[data-eq="' + CSS.escape(id) + '"]:not([data-sheet])');
    if (!node) return;
    const home = node.closest(".plate");
    if (home !== plate) turnTo(home.id.slice("plate-".length));
    if (scale < 0.6) zoom(1);
    const box = node.getBoundingClientRect(), view = frame(), at = view.getBoundingClientRect();
    view.scrollLeft += box.left - at.left - (view.clientWidth - box.width) / 2;
    view.scrollTop += box.top - at.top - (view.clientHeight - box.height) / 2;
    document.getElementById("one-line").scrollIntoView({ block: "start" });
    view.scrollIntoView({ block: "nearest" });
    node.focus({ preventScroll: true });
  }

  document.addEventListener("equipment", function (event) {
    const id = event.detail.id;
    for (const old of document.querySelectorAll(".node.here")) old.classList.remove("here");
    for (const node of document.querySelectorAll('.node[data-eq="' + CSS.escape(id) + '"]')) node.classList.add("here");
    say(document.getElementById(id));
    if (event.detail.show) show(id);
  });

  // Marks each device that the verdict of the chosen equipment names, each part of the verdict by a shape of its own, and
  // says above the picture what the shapes mean and which devices they are.
  function say(piece) {
    for (const old of document.querySelectorAll(".said")) old.remove();
    const kinds = ["drawn", "found", "live"].map(name => ({ name: name, devices: (piece.dataset[name] || "").split("\n").filter(d => d) }));
    key.hidden = kinds.every(k => k.devices.length === 0);
    key.querySelector("b").textContent = piece.dataset.name;
    for (const k of kinds) {
      const entry = key.querySelector("." + k.name);
      entry.hidden = k.devices.length === 0;
      entry.querySelector("output").textContent = k.devices.join(", ");
    }
    for (const device of document.querySelectorAll(".taps [data-device]")) {
      const fits = kinds.filter(k => k.devices.includes(device.dataset.device));
      if (fits.length === 0) continue;
      const note = make("g", { class: "said", transform: device.getAttribute("transform") });
      for (const k of fits) note.append(make("use", { href: "#ring-" + k.name }));
      device.closest("svg").append(note);
    }
  }

  function make(name, attributes) {
    const element = document.createElementNS("http://www.w3.org/2000/svg", name);
    for (const attribute in attributes) element.setAttribute(attribute, attributes[attribute]);
    return element;
  }
  choice.addEventListener("change", () => turnTo(choice.value));
  document.getElementById("zoom-in").addEventListener("click", () => zoom(scale * 1.25));
  document.getElementById("zoom-out").addEventListener("click", () => zoom(scale / 1.25));
  document.getElementById("zoom-fit").addEventListener("click", fit);
  document.getElementById("zoom-full").addEventListener("click", () => zoom(1));

  for (const p of plates) {
    const view = p.querySelector(".window");
    if (view === null) continue;
    view.addEventListener("keydown", function (event) {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      if (event.key === "+" || event.key === "=") zoom(scale * 1.25);
      else if (event.key === "-") zoom(scale / 1.25);
      else if (event.key === "0") fit();
      else return;
      event.preventDefault();
    });
    view.addEventListener("wheel", function (event) {
      if (!event.ctrlKey) return;
      zoom(scale * Math.exp(-event.deltaY / 200));
      event.preventDefault();
    }, { passive: false });
    // A flag that names another sheet turns to it.
    view.addEventListener("click", function (event) {
      const flag = event.target.closest(".node[data-sheet]");
      if (!flag) return;
      event.preventDefault();
      event.stopPropagation();
      turnTo(flag.dataset.sheet);
      if (flag.dataset.eq) show(flag.dataset.eq);
    });
    drag(view);
  }

  // A mouse drags the picture; fingers scroll it without help.
  function drag(view) {
    let from = null;
    view.addEventListener("pointerdown", function (event) {
      if (event.pointerType !== "mouse" || event.button !== 0) return;
      from = { x: event.clientX, y: event.clientY, left: view.scrollLeft, top: view.scrollTop, moved: false };
    });
    window.addEventListener("pointermove", function (event) {
      if (!from) return;
      const dx = event.clientX - from.x, dy = event.clientY - from.y;
      if (Math.abs(dx) + Math.abs(dy) > 4) { from.moved = true; view.classList.add("dragging"); }
      view.scrollLeft = from.left - dx;
      view.scrollTop = from.top - dy;
    });
    window.addEventListener("pointerup", function () {
      if (from && from.moved) view.addEventListener("click", stop, { capture: true, once: true });
      setTimeout(() => view.removeEventListener("click", stop, { capture: true }), 0);
      view.classList.remove("dragging");
      from = null;
    });
    view.addEventListener("dragstart", event => event.preventDefault());
    function stop(event) { event.preventDefault(); event.stopPropagation(); }
  }

  turnTo(plates[0].id.slice("plate-".length));
})();
