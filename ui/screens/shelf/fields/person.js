// The fields of a person.

export const PERSON = [
  { title: "names", fields: [{ key: "id", as: "text" }, { key: "name", as: "text" }, { key: "role", as: "choice", options: ["technician", "foreman", "reader"] }, { key: "organisation", as: "text", optional: true }] },
];
