using System.Collections.Frozen;

namespace Lugwork.Reading;

/// <summary>The words of trade in the rows of an export: of articles, of quantities and places in the store, of money. Common practice, no source.</summary>
internal static class ExportWords
{
    private static readonly FrozenSet<string> Articles = FrozenSet.ToFrozenSet(["art", "artnr", "artikel", "artikelnummer", "article", "articolo", "articulo", "ref", "reference", "referencia", "referenz", "riferimento", "rif", "cod", "code", "codigo", "codice", "sku", "ean", "gtin", "cb", "barcode", "nr", "no", "num", "nummer", "item", "pos", "position", "sn", "pn", "mpn", "lag", "mag", "loc", "kunde", "cliente", "client", "klant", "customer", "artno", "partno", "itemno", "teilenr", "teilenummer", "ersatzteilnr", "ersatzteilnummer", "bestellnr", "bestellnummer", "bestnr", "onderdeelnr", "bestelnr", "bestelnummer"], StringComparer.Ordinal);

    private static readonly FrozenSet<string> Quantities = FrozenSet.ToFrozenSet(["stk", "stck", "stuck", "stuks", "st", "stock", "vrd", "vrrd", "coll", "collo", "colli", "ult", "voorr", "voorraad", "restposten", "posten", "einzelstuck", "lgr", "unid", "unids", "exist", "giac", "dispon", "avl", "onhand", "soh", "qt", "ordered", "ord", "aant", "menge", "anz", "anzahl", "aantal", "qty", "qte", "qta", "q", "quantity", "quantita", "quantite", "cant", "cantidad", "cdad", "ud", "uds", "unidad", "unidades", "pz", "pezzo", "pezzi", "pc", "pcs", "pce", "pces", "piece", "pieces", "lager", "lagernd", "bestand", "magazzino", "giacenza", "disp", "dispo", "disponibili", "disponibles", "existencias", "almacen", "vpe", "ve", "paar", "paire", "paires", "par", "pares", "paio", "paia", "pair", "pairs", "box", "loc", "fach", "regal", "shelf", "bin", "lagerort", "ort", "estante", "estanteria", "scaffale", "rayon", "etagere", "tray", "pallet", "tag", "best", "karton", "krt", "pck", "pkg", "pack", "packs", "pr", "prs", "set", "sets", "satz", "jgo", "juego", "juegos", "u", "un", "left", "instock", "bilder", "fotos", "photos", "foto", "lot", "los", "reste", "rest", "restan", "rouleau", "rouleaux", "rolle", "rollen", "rol", "rollo", "rollos", "rotolo", "roll", "rolls", "avail", "available", "ex", "exemplaire", "exemplaires", "vak", "lade", "schap", "kast", "doos", "dozen", "lotto", "tiroir", "bac", "cassetto", "cajon", "conf", "confezione", "colis", "ultimo", "ultima", "ultimi"], StringComparer.Ordinal);

    /// <summary>Small words beside a quantity: "in stock 3", "q.tà 7".</summary>
    private static readonly FrozenSet<string> Fillers = FrozenSet.ToFrozenSet(["en", "in", "auf", "ab", "op", "on", "hand", "of", "ta", "a", "di", "de", "da"], StringComparer.Ordinal);

    private static readonly FrozenSet<string> Currencies = FrozenSet.ToFrozenSet(["pv", "eur", "euro", "euros", "chf", "usd", "gbp", "vb", "vhb", "pu", "pvp", "vk", "ek", "uvp", "rrp", "msrp", "preis", "prix", "precio", "prezzo", "prijs", "price", "\u20AC", "\u00A3", "$"], StringComparer.Ordinal);

    /// <summary>Letters in front of the figures of an interface: no code of a shop.</summary>
    private static readonly FrozenSet<string> Families = FrozenSet.ToFrozenSet(["ec", "zs", "is", "eb", "pf", "bb", "bsa", "t", "m", "pm", "fm", "hg", "ms", "xd", "xdr", "fg", "iso", "etrto", "od", "id", "o", "p", "l", "b", "h", "d", "w", "z", "n", "s", "c", "sr", "bcd", "lk", "pcd", "iscg", "jis", "qr", "ta", "old"], StringComparer.Ordinal);

    public static bool IsArticle(string word) => Articles.Contains(word);

    public static bool IsQuantity(string word) => Quantities.Contains(word);

    public static bool IsFiller(string word) => Fillers.Contains(word);

    public static bool IsCurrency(string word) => Currencies.Contains(word);

    public static bool IsFamily(string word) => Families.Contains(word);
}
