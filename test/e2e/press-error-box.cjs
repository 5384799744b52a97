// Loaded before the program: presses the button of the system's error box, which nobody is there to press.
const { dialog } = require('electron');

dialog.showErrorBox = () => undefined;
