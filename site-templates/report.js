// A button that copies the text it stands beside: a report to send, or a job.
for (const text of document.querySelectorAll(".report pre")) {
  const button = Object.assign(document.createElement("button"), { type: "button", textContent: "Copy this text" });
  const said = document.createElement("span");
  said.setAttribute("role", "status");
  button.addEventListener("click", async () => {
    try {
      await navigator.clipboard.writeText(text.textContent);
      said.textContent = " Copied.";
    } catch {
      getSelection().selectAllChildren(text);
      said.textContent = " The browser did not let it be copied; it is marked.";
    }
  });
  const line = document.createElement("p");
  line.append(button, said);
  text.after(line);
}
