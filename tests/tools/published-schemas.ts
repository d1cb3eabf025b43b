import { toJsonSchema } from '@valibot/to-json-schema';
import { format } from 'prettier';
import { kitSheetShape } from '../../src/procedure/kit-sheet';
import { batchFileShape } from '../../src/workflow/batch-file';

const SHAPES = {
  'kit-sheet.schema.json': { title: 'Fallbright kit sheet, version 1', shape: kitSheetShape },
  'batch-file.schema.json': { title: 'Fallbright batch, version 1', shape: batchFileShape },
};

/** The JSON Schemas that are published in `public/`, by file name, as the shapes in the code make them. */
export const publishedSchemas = async (): Promise<Map<string, string>> =>
  new Map(
    await Promise.all(
      Object.entries(SHAPES).map(async ([name, { title, shape }]): Promise<[string, string]> => {
        const { $schema, ...schema } = toJsonSchema(shape, {
          target: 'draft-07',
          typeMode: 'input',
          ignoreActions: ['transform', 'trim'],
        });
        const text = JSON.stringify({ $schema, title, ...schema });
        return [name, await format(text, { parser: 'json', printWidth: 110 })];
      }),
    ),
  );
