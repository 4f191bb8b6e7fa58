(function () {
  var prefix = "slotledger " + document.body.dataset.sheet + " ";
  document.querySelectorAll("input").forEach(function (input) {
    var key = prefix + input.name;
    var box = input.type === "checkbox";
    try {
      var kept = localStorage.getItem(key);
      if (kept !== null) {
        if (box) { input.checked = kept === "1"; } else { input.value = kept; }
      }
      input.addEventListener("change", function () {
        localStorage.setItem(key, box ? (input.checked ? "1" : "0") : input.value);
      });
    } catch (unavailable) {
      // The page works without memory; what is ticked is then gone when it is closed.
    }
  });
})();
