import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import ts from 'typescript';

const ROUTE_FILE = /(^|\/)\+(page\.svelte|page\.server\.ts|server\.ts)$/;
const METHODS = ['GET', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS', 'HEAD', 'fallback'] as const;

/** An address pattern of the program, as kit names it, and what it answers to. */
export type Route = {
	readonly id: string;
	/** Names of the form actions of a page. */
	readonly actions: readonly string[];
	/** Methods of an endpoint; empty for a page. */
	readonly methods: readonly string[];
};

type Exported = ReadonlyMap<string, ts.Node>;

/** Everything a file exports by name. What cannot be read off the syntax is an error: nothing may be overlooked. */
function exportedBy(source: ts.SourceFile): Exported {
	const found = new Map<string, ts.Node>();
	const isExported = (node: ts.HasModifiers) =>
		node.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) ?? false;
	for (const statement of source.statements) {
		if (ts.isVariableStatement(statement) && isExported(statement))
			for (const { name, initializer } of statement.declarationList.declarations) {
				if (!ts.isIdentifier(name)) throw new Error(`${source.fileName}: export by a plain name`);
				found.set(name.text, initializer ?? name);
			}
		else if (ts.isFunctionDeclaration(statement) && statement.name && isExported(statement))
			found.set(statement.name.text, statement);
		else if (ts.isExportDeclaration(statement) && !statement.isTypeOnly)
			throw new Error(`${source.fileName}: export where it is declared, or this list is not complete`);
	}
	return found;
}

function actionNames(source: ts.SourceFile, exported: Exported): string[] {
	let value = exported.get('actions');
	if (!value) return [];
	while (ts.isSatisfiesExpression(value) || ts.isAsExpression(value)) value = value.expression;
	if (!ts.isObjectLiteralExpression(value))
		throw new Error(`${source.fileName}: actions must be written out as an object`);
	return value.properties.map(({ name }) => {
		if (name && (ts.isIdentifier(name) || ts.isStringLiteral(name))) return name.text;
		throw new Error(`${source.fileName}: every action needs a name that can be read`);
	});
}

const parse = (path: string) =>
	ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true);

/** Every page, form action and endpoint there is, read from the folders of routes. */
export function routeTree(folder: string): Route[] {
	const routes = new Map<string, Route>();
	for (const path of readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((one) =>
		ROUTE_FILE.test(one)
	)) {
		const id = `/${dirname(path)}`.replace(/^\/\.$/, '/');
		const before = routes.get(id) ?? { id, actions: [], methods: [] };
		if (path.endsWith('.svelte')) {
			routes.set(id, before);
			continue;
		}
		const source = parse(join(folder, path));
		const exported = exportedBy(source);
		routes.set(id, {
			id,
			actions: [...before.actions, ...actionNames(source, exported)],
			methods: path.endsWith('+server.ts') ? METHODS.filter((method) => exported.has(method)) : before.methods
		});
	}
	return [...routes.values()].sort((a, b) => a.id.localeCompare(b.id));
}

/** The names of the parameters in an address pattern. */
export const paramsOf = ({ id }: Route): string[] =>
	[...id.matchAll(/\[\.{0,3}(\w+)(?:=\w+)?\]/g)].map(([, name]) => name!);

/** An address of the route. Parameters are put in as they are: whoever calls has encoded them. */
export const addressOf = ({ id }: Route, params: Readonly<Record<string, string>>): string =>
	id.replace(/\[\.{0,3}(\w+)(?:=\w+)?\]/g, (_, name: string) => {
		const value = params[name];
		if (value === undefined) throw new Error(`${id} needs a value for ${name}`);
		return value;
	});
