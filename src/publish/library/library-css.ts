/** On top of the style sheet of handouts: pages that are looked at, and seldom printed. */
export const libraryCss = `
.library{max-width:62rem;margin:0 auto;padding:2.5rem 1.25rem 4rem;font-size:1rem}
.library h1{font-size:clamp(2.1rem,6vw,3.2rem);margin:0}
.library h2{font-size:1.5rem;margin:2.2rem 0 .8rem}
.library .summary{font-size:1.15rem;margin:.8rem 0 0}
.library .front{display:flex;flex-wrap:wrap;gap:1.5rem 2.5rem;align-items:center;justify-content:space-between;margin:0 0 2rem}
.library .front>div:first-child{flex:1 1 20rem}
.library .level{margin:.8rem 0 0}
.library nav{margin:0 0 1.5rem}
.finder{display:flex;flex-wrap:wrap;gap:.4rem 1rem;align-items:baseline;margin:0 0 1.6rem}
.finder[hidden]{display:none}
.finder label{font-weight:600}
.finder input{font:inherit;color:inherit;flex:1 1 16rem;max-width:28rem;padding:.5rem .7rem;border:2px solid var(--slate);border-radius:4px;background:#fff}
.finder input:focus-visible,.library a:focus-visible{outline:3px solid var(--rust);outline-offset:2px}
.finder output{color:var(--slate)}
.lessons{display:grid;grid-template-columns:repeat(auto-fill,minmax(15rem,1fr));gap:1.6rem 1.4rem;list-style:none;padding:0;margin:0}
.lessons li{display:flex;flex-direction:column;border-top:2px solid var(--slate);padding:.7rem 0 0}
.lessons li[hidden]{display:none}
.lessons .picture{display:flex;align-items:center;justify-content:center;height:11rem;margin:0 0 .7rem;background:var(--sand);padding:.9rem}
.lessons .picture svg,.card-picture svg{width:auto;height:auto;max-width:100%;max-height:100%}
.lessons .picture svg{height:100%}
.lessons h2{font-size:1.3rem;margin:0}
.lessons p{margin:.4rem 0 0}
.lessons .level,.lessons .sizes{color:var(--slate);font-size:.95rem}
.wrong{border-left:4px solid var(--rust);padding-left:.7rem}
.card-picture{flex:0 1 20rem;background:var(--sand);padding:1rem}
.table-scroll{overflow-x:auto}
.library table{border-collapse:collapse;width:100%;font-size:1rem}
.library th,.library td{text-align:left;vertical-align:top;padding:.45rem 1rem .45rem 0;border-bottom:1px solid var(--rule)}
.library thead th{color:var(--slate);font-weight:600}
.library td.place{white-space:nowrap}
.library .cure{color:var(--slate);margin:.2rem 0 0}
.library code{font-size:.95em;overflow-wrap:anywhere}
`
