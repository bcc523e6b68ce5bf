// Reckons the digest of a book from its documentation: node digest.mjs FOLDER
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";

const root = process.argv[2];
const folders = [...readdirSync(join(root, "jurisdictions")).map(name => `jurisdictions/${name}`), "schema/vocabulary", "schema/reference"]
  .filter(folder => statSync(join(root, folder)).isDirectory());
const paths = folders.flatMap(folder => readdirSync(join(root, folder)).filter(name => name.endsWith(".yaml")).map(name => `${folder}/${name}`));
const hash = createHash("sha256");
for (const path of paths.sort((a, b) => (a < b ? -1 : 1))) {
  const text = readFileSync(join(root, path), "utf8").replace(/^\uFEFF/, "").replaceAll("\r\n", "\n");
  hash.update(`${path}\0${text}\0`);
}
console.log(`sha256:${hash.digest("hex")}`);
