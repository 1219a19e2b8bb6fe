/** No browser is downloaded on install: an installed one is used, or the one that ships as an optional package. */
module.exports = { skipDownload: true }
