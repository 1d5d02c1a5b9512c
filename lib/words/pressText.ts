/** Of a press whose form can't be read: nobody made it by hand, so there is no field to name. */
export const unreadablePress = 'This press could not be read. Load the page again.'
