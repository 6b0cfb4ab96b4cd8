// Comforts only: every page works without this file.
"use strict";
(() => {
  for (const button of document.querySelectorAll("[data-print]")) {
    button.hidden = false;
    button.addEventListener("click", () => window.print());
  }

  const faults = document.getElementById("faults");
  if (faults) faults.focus();

  /**
   * Asks for the part of a page that follows from a form, and puts it in place. Meanwhile the place is marked as busy;
   * only the latest answer counts, and what was asked before it is called off.
   */
  const follow = (form, place, path, settled) => {
    let asked = null;
    const ask = async (extra) => {
      if (asked) asked.abort();
      const mine = new AbortController();
      asked = mine;
      place.setAttribute("aria-busy", "true");
      const fields = new URLSearchParams(new FormData(form));
      if (extra) fields.set(extra.name, extra.value);
      const answer = await fetch(path, { method: "POST", body: fields, credentials: "same-origin", signal: mine.signal }).catch(() => null);
      const text = answer && answer.ok ? await answer.text().catch(() => null) : null;
      if (mine !== asked) return;
      place.removeAttribute("aria-busy");
      if (text === null) return;
      place.innerHTML = text;
      const address = answer.headers.get("X-Heapwright-Address");
      if (address) history.replaceState(null, "", address);
      const carried = document.getElementById("keep-recipe");
      if (address && carried) carried.value = address.split("?")[1] || "";
      settled(extra);
    };
    let waiting = 0;
    const soon = () => {
      clearTimeout(waiting);
      waiting = setTimeout(ask, 200);
    };
    return { ask, soon };
  };

  // A form is sent only where Heapwright can be reached: else it stays as it is, with all that was typed, and tries again.
  // What is sent twice is taken once, so trying again can do no harm.
  const TRY_AGAIN = 5000;
  const told = document.getElementById("offline");
  const reached = () => fetch(told.dataset.there, { cache: "no-store" }).then((a) => a.ok).catch(() => false);
  let waiting = null;
  const send = async (form, button) => {
    clearTimeout(waiting);
    if (await reached()) {
      told.hidden = true;
      form.dataset.sent = "yes";
      form.requestSubmit(button);
      return;
    }
    told.hidden = false;
    waiting = setTimeout(send, TRY_AGAIN, form, button);
  };
  document.addEventListener("submit", (event) => {
    const form = event.target;
    if (event.defaultPrevented || form.method !== "post" || form.dataset.sent) {
      delete form.dataset.sent;
      return;
    }
    event.preventDefault();
    send(form, event.submitter);
  });

  const say = (text) => {
    const said = document.getElementById("said");
    if (said) said.textContent = text;
  };

  // A list of the knowledge: what is typed filters it as it stands, and what an address names is unfolded.
  const list = document.querySelector("[data-filter]");
  if (list) {
    const box = document.getElementById("q");
    const told = document.getElementById("filtered");
    const items = [...list.querySelectorAll("li")].map((li) => ({ li, text: (li.textContent + " " + (li.dataset.also || "")).toLowerCase() }));
    const groups = [...list.querySelectorAll("details.group")];
    box.addEventListener("input", () => {
      const words = box.value.toLowerCase().split(/\s+/).filter(Boolean);
      let count = 0;
      for (const { li, text } of items) {
        li.hidden = !words.every((word) => text.includes(word));
        if (!li.hidden) count++;
      }
      for (const group of groups) {
        group.hidden = !group.querySelector("li:not([hidden])");
        group.open = words.length > 0 && !group.hidden;
      }
      told.textContent = words.length ? told.dataset.told.replace("{n}", count) : "";
    });
    const unfold = () => {
      const named = document.getElementById(decodeURIComponent(location.hash.slice(1)));
      if (!named || !list.contains(named)) return;
      for (let at = named; at && at !== list; at = at.parentElement) if (at.tagName === "DETAILS") at.open = true;
      const own = named.querySelector("details");
      if (own) own.open = true;
      named.scrollIntoView();
    };
    unfold();
    addEventListener("hashchange", unfold);
  }

  const checkup = document.getElementById("checkup");
  if (checkup) {
    const live = document.getElementById("live");
    const count = (details) => {
      const answered = details.querySelectorAll("input[type=radio]:checked:not([value=''])").length;
      const shown = details.querySelector(".count");
      if (shown && answered === 0) shown.remove();
    };
    // The line at the foot of a phone, which stays in sight among the questions; without scripts it is a button alone.
    const bar = document.getElementById("bar");
    const keepBar = () => {
      const stands = live.querySelector(".stands");
      const whole = live.querySelector(".sofar button");
      bar.hidden = !stands;
      if (stands) bar.querySelector("span").textContent = stands.textContent;
      if (whole) bar.parentElement.querySelector("button").textContent = whole.textContent;
      bar.parentElement.classList.toggle("danger", !!live.querySelector(".sofar.danger"));
    };
    keepBar();
    const follower = follow(checkup, live, checkup.getAttribute("action") + "/live", (pressed) => {
      const stands = document.getElementById("stands");
      if (stands) say(stands.textContent);
      keepBar();
      const ask = document.getElementById("next-ask") || document.getElementById("sofar-title");
      if (pressed && ask) ask.focus({ preventScroll: false });
    });
    checkup.addEventListener("change", (event) => {
      const details = event.target.closest("details.sense");
      if (details) count(details);
      follower.soon();
    });
    live.addEventListener("click", (event) => {
      const button = event.target.closest("button[name=next]");
      if (!button) return;
      event.preventDefault();
      const [sign, answer] = button.value.split(":");
      const choices = checkup.elements["sign." + sign];
      if (answer === "pass") {
        const passed = checkup.elements["p"];
        passed.value = passed.value ? passed.value + "." + sign : sign;
      } else if (choices) {
        choices.value = answer;
      }
      follower.ask({ name: "next", value: button.value });
    });
  }

  const trial = document.getElementById("try");
  if (trial) {
    trial.querySelector("button").hidden = true;
    const path = trial.getAttribute("action").split("#")[0] + "/live";
    const follower = follow(trial, document.getElementById("tried"), path, () => {
      const answer = document.getElementById("try-answer");
      if (answer) say(answer.textContent);
    });
    trial.addEventListener("change", follower.soon);
  }

  const recipe = document.getElementById("recipe");
  if (recipe) {
    const numbers = document.getElementById("numbers");
    const follower = follow(recipe, numbers, "/build/live", () => {
      const verdict = document.getElementById("verdict");
      if (verdict) say(verdict.textContent);
    });
    const winter = follow(recipe, document.getElementById("outlook"), "/build/outlook", () => {});
    recipe.addEventListener("change", () => {
      follower.soon();
      winter.soon();
    });
  }
})();
