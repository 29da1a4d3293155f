// The host draws the neck while the program is on its way, where the program will draw it. Without a host it is seen somewhat later.
{
  const place = document.querySelector(".opening-neck");
  if (!studio.isWriting() && matchMedia("(min-width: 901px) and (min-height: 561px) and (pointer: fine)").matches) {
    const asked = new URLSearchParams({
      show: studio.asked("show") || place.dataset.sentence,
      names: studio.asked("names") ?? "",
      // A CSS pixel is 3/4 of a point.
      room: studio.neckRoom() * 0.75,
    });
    fetch(`api/opening?${asked}`)
      .then(answer => (answer.ok ? answer.text() : ""))
      .then(svg => {
        if (svg && place.isConnected) place.innerHTML = `<div>${svg}</div>`;
      })
      .catch(() => {});
  }
}
