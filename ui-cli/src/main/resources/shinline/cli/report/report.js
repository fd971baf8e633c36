
// Shows value and frame under the pointer, a finger or the arrow keys; the page is whole without it.
(function () {
  "use strict";
  var plots = document.querySelector(".plots");
  if (!plots) return;
  document.body.classList.add("script");
  var list = function (element, name) { return element.dataset[name].split(" "); };
  var times = list(plots, "t").map(Number);
  var frames = list(plots, "f");
  var from = Number(plots.dataset.from);
  var to = Number(plots.dataset.to);
  var inches = document.getElementById("units-in");
  var at = 0;
  var panels = Array.prototype.map.call(document.querySelectorAll(".curve"), function (panel) {
    var plot = panel.querySelector("svg.plot");
    var cursor = document.createElementNS(plot.namespaceURI, "line");
    cursor.setAttribute("class", "cursor");
    cursor.setAttribute("y1", "0");
    cursor.setAttribute("y2", "100%");
    cursor.setAttribute("visibility", "hidden");
    plot.appendChild(cursor);
    return { panel: panel, plot: plot, cursor: cursor, values: list(panel, "v"),
      unit: panel.dataset.unit, output: panel.querySelector("output") };
  });
  function words(p) {
    var value = p.values[at];
    if (value === "-") return plots.dataset.notSeen;
    if (p.unit === "\u00a0cm" && inches.checked) return (value / 2.54).toFixed(1).replace("-", "\u2212") + "\u00a0in";
    return value.replace("-", "\u2212") + p.unit;
  }
  function show(index) {
    at = Math.max(0, Math.min(times.length - 1, index));
    var x = 100 * (times[at] - from) / (to - from) + "%";
    panels.forEach(function (p) {
      p.cursor.setAttribute("x1", x);
      p.cursor.setAttribute("x2", x);
      p.cursor.setAttribute("visibility", "visible");
      // A function, as a text in its place could hold signs with a meaning.
      p.output.textContent = plots.dataset.at.replace(/\$(value|time|frame)/g, function (all, name) {
        return { value: words(p), time: times[at].toFixed(2), frame: frames[at] }[name];
      });
    });
  }
  function nearest(time) {
    var best = 0;
    times.forEach(function (t, i) { if (Math.abs(t - time) < Math.abs(times[best] - time)) best = i; });
    return best;
  }
  panels.forEach(function (p) {
    function point(event) {
      var box = p.plot.getBoundingClientRect();
      show(nearest(from + (to - from) * (event.clientX - box.left) / box.width));
    }
    p.plot.addEventListener("pointermove", point);
    p.plot.addEventListener("pointerdown", point);
    p.panel.tabIndex = 0;
    p.panel.setAttribute("role", "group");
    p.panel.setAttribute("aria-labelledby", p.panel.querySelector("h3").id);
    p.panel.addEventListener("keydown", function (event) {
      var step = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
      if (!step) return;
      event.preventDefault();
      show(at + step * (event.shiftKey ? 10 : 1));
    });
  });
}());
