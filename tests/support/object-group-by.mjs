// For the tests and the generator the same as in the shipped server.
import '../../server/object-group-by.mjs';
