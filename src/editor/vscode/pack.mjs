/** Packs the extension for Visual Studio Code from what the build made and npm installed: a .vsix is a zip with a manifest. Run by `npm run vsix`. */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { zipSync } from 'fflate';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const { version } = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8'));
const target = process.argv[2] ?? path.join(root, `dist/tamis-${version}.vsix`);
/** The zip format counts years from 1980; one date for all makes the same file of the same sources. */
const DATE = new Date(1980, 0, 1);

const extension = JSON.parse(readFileSync(new URL('package.json', import.meta.url), 'utf8'));
extension.version = version;
const schema = path.join(root, 'dist/schema/house-style.json');
if (!existsSync(schema)) delete extension.contributes.yamlValidation;

const files = {
  '[Content_Types].xml': contentTypes(),
  'extension.vsixmanifest': manifest(extension),
  'extension/package.json': JSON.stringify(extension, null, 2),
  'extension/extension.cjs': readFileSync(path.join(root, 'dist/src/editor/vscode/extension.cjs')),
  'extension/LICENSE.txt': readFileSync(path.join(root, 'LICENSE')),
  ...(existsSync(schema) ? { 'extension/house-style.schema.json': readFileSync(schema) } : {}),
};
for (const folder of packagesFor('vscode-languageclient', root))
  for (const file of filesToRun(folder))
    files[`extension/${path.relative(root, file).split(path.sep).join('/')}`] = readFileSync(file);

const bytes = Object.fromEntries(
  Object.entries(files).map(([name, content]) => [
    name,
    typeof content === 'string' ? Buffer.from(content) : content,
  ]),
);
writeFileSync(target, zipSync(bytes, { mtime: DATE }));
console.log(path.relative(process.cwd(), target));

/** The folder of a package and of all that it depends on, as Node would find them from `from`. */
function packagesFor(name, from, found = new Set()) {
  const folder = folderOf(name, from);
  if (found.has(folder)) return found;
  found.add(folder);
  const { dependencies = {} } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8'));
  for (const each of Object.keys(dependencies)) packagesFor(each, folder, found);
  return found;
}

function folderOf(name, from) {
  for (let at = from; ; at = path.dirname(at)) {
    const folder = path.join(at, 'node_modules', name);
    if (existsSync(path.join(folder, 'package.json'))) return folder;
    if (at === path.dirname(at)) throw new Error(`pack: expected ${name} to be installed; run npm ci`);
  }
}

/** What runs, and its licences; types, source maps and nested packages are left behind (those come by themselves). */
function filesToRun(folder) {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const own = path.join(folder, entry.name);
    if (entry.isDirectory()) return entry.name === 'node_modules' ? [] : filesToRun(own);
    return /\.(c?js|json)$|^licen[cs]e/i.test(entry.name) ? [own] : [];
  });
}

function manifest({ name, displayName, description, publisher, engines, categories }) {
  return `<?xml version="1.0" encoding="utf-8"?>
<PackageManifest Version="2.0.0" xmlns="http://schemas.microsoft.com/developer/vsx-schema/2011">
  <Metadata>
    <Identity Language="en-US" Id="${name}" Version="${version}" Publisher="${publisher}" />
    <DisplayName>${displayName}</DisplayName>
    <Description xml:space="preserve">${description}</Description>
    <Categories>${categories.join(',')}</Categories>
    <Properties>
      <Property Id="Microsoft.VisualStudio.Code.Engine" Value="${engines.vscode}" />
    </Properties>
    <License>extension/LICENSE.txt</License>
  </Metadata>
  <Installation>
    <InstallationTarget Id="Microsoft.VisualStudio.Code" />
  </Installation>
  <Dependencies />
  <Assets>
    <Asset Type="Microsoft.VisualStudio.Code.Manifest" Path="extension/package.json" Addressable="true" />
  </Assets>
</PackageManifest>
`;
}

function contentTypes() {
  const types = {
    cjs: 'application/javascript',
    js: 'application/javascript',
    json: 'application/json',
    md: 'text/markdown',
    txt: 'text/plain',
    vsixmanifest: 'text/xml',
  };
  return `<?xml version="1.0" encoding="utf-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
${Object.entries(types)
  .map(([extension, type]) => `  <Default Extension=".${extension}" ContentType="${type}" />`)
  .join('\n')}
</Types>
`;
}
