/** The pages themselves: what each shows and what a form on it does. Templates stand in {@code src/main/jte}. */
package heapwright.web.site;
