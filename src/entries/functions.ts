import { associateFunctions } from '../adapters/office/functions';
import { FUNCTIONS } from '../functions/index';

// Outside Excel the page has no runtime to tell, and the pane says so.
if (typeof CustomFunctions !== 'undefined')
  associateFunctions(
    {
      associate: (id, body) => CustomFunctions.associate(id, body),
      // Made when it is needed: the class comes from Excel, later than this script. The codes are the error texts.
      error: (value, message) => new CustomFunctions.Error(value as CustomFunctions.ErrorCode, message),
    },
    FUNCTIONS,
  );
