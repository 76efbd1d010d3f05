import tseslint from "typescript-eslint";

export default tseslint.config(
  { ignores: ["dist/", "node_modules/", ".cache/", ".bench/"] },
  // pasted into another file, where its functions are called
  { ignores: ["src/cli/build/google-sheets/around.js"] },
  ...tseslint.configs.strict,
  ...tseslint.configs.stylistic,
  {
    files: ["**/*.ts", "**/*.tsx"],
    rules: {
      "@typescript-eslint/consistent-type-definitions": "off",
      "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "inline-type-imports" }],
      "@typescript-eslint/no-non-null-assertion": "error",
      "no-restricted-syntax": [
        "error",
        { selector: "CallExpression[callee.name='eval']", message: "No eval." },
        { selector: "NewExpression[callee.name='Function']", message: "No code from text." },
      ],
      eqeqeq: "error",
      "no-console": "error",
    },
  },
  {
    files: ["src/cli/**", "tests/**"],
    rules: { "no-console": "off", "no-restricted-syntax": "off" },
  },
);
