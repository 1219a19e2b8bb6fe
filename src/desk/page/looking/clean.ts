/** What has no place on a sheet of paper: it would run, ask, load or send something. */
const unwanted =
  'script,iframe,frame,frameset,object,embed,applet,base,meta,link,style,template,noscript,form,input,button,select,textarea,dialog,audio,video,source,portal,foreignObject,animate,set,animateTransform,animateMotion,use'

/** Links that a reader may follow, places in the page itself, and pictures that stand in it. */
const mayPoint = { href: /^(https?:|mailto:|#)/i, src: /^(data:image\/|blob:)/i }

/**
 * Takes out of HTML what a sheet of paper has no use for. The lesson has been cleaned once when the page was made of it,
 * and the frame it goes into runs nothing and fetches nothing; this holds even where one of these should fail.
 */
export function cleaned<E extends Element>(root: E): E {
  for (const found of root.querySelectorAll(unwanted)) found.remove()
  cleanAttributes(root)
  for (const element of root.querySelectorAll('*')) cleanAttributes(element)
  return root
}

function cleanAttributes(element: Element): void {
  for (const { name, value } of [...element.attributes]) {
    const plain = name.toLowerCase()
    if (plain.startsWith('on') || plain === 'srcset' || plain === 'srcdoc' || plain === 'ping')
      element.removeAttribute(name)
    else if (plain.endsWith('href') && !mayPoint.href.test(value.trim())) element.removeAttribute(name)
    else if (plain === 'src' && !mayPoint.src.test(value.trim())) element.removeAttribute(name)
    else if (plain === 'style' && /url|image|@|\\|expression/i.test(value)) element.removeAttribute(name)
  }
  // Without an ear for clicks it opens nothing: the frame may not open windows.
  if (element.localName === 'a' && element.hasAttribute('href')) {
    element.setAttribute('target', '_blank')
    element.setAttribute('rel', 'noopener noreferrer')
  }
}
