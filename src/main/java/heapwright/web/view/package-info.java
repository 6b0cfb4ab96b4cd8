/** What the pages show, in words and ready to be set: records for templates, made from advice and tables. */
package heapwright.web.view;
