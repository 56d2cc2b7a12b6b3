/** What files are called that no page of ours names: the maker's own name for the thing, and what it is. */
export const fileNames = {
  handout: (name: string) => `${name} handout`,
  shoppingList: (name: string) => `${name} shopping list`,
  timetable: (name: string) => `${name} timetable`,
};
