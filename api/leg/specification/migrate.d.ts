type Document = Record<string, unknown>;
export declare function migrate(document: Readonly<Document>): Document;
export {};
