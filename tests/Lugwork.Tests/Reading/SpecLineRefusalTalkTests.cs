using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Advertisements in which the doubt is of the value: in another clause, another sentence, before it and behind it. The same words say nothing of it in the sentences that are read.</summary>
public sealed class SpecLineRefusalTalkTests
{
    [Theory]
    [InlineData("frame", "Selling my frame, well kept, no scratches. 12x148, perhaps. Shipping at cost.")]
    [InlineData("frame", "12x148 - not sure, bought it years ago and never measured, price is firm")]
    [InlineData("frame", "12x148? if I remember rightly, ridden ten times")]
    [InlineData("frame", "check before buying: 12x148, collection preferred")]
    [InlineData("frame", "Rear axle 12x148. I have not measured it. Payment by transfer.")]
    [InlineData("frame", "27.2 I think. Measure it yourself. Seat tube of a nice old frame, no dents.")]
    [InlineData("frame", "The shell says 68 but could be 73, sold as seen")]
    [InlineData("frame", "12x148 with the adapter, posted for free if you pay today")]
    [InlineData("frame", "Rear 12x148, about. Collection only please.")]
    [InlineData("frame", "12x148, about as far as I know, ridden perhaps ten times")]
    [InlineData("frame", "Seat tube 27.2, perhaps bored out later, sold cheap")]
    [InlineData("frame", "12x148, if the seller told me the truth, shipping included")]
    [InlineData("frame", "12x148, if the receipt is right, price negotiable")]
    [InlineData("frame", "12x148, unless the previous owner changed it, no offers")]
    [InlineData("frame", "12x148 if you want, can be changed for a small price")]
    [InlineData("frame", "Can be had as 12x148, if you prefer, price on request")]
    [InlineData("frame", "If you pay extra, I can send it as 12x148")]
    [InlineData("frame", "I guess the axle is 12x148. Photos on request.")]
    [InlineData("frame", "No idea really, 12x148 maybe, pick up or delivery")]
    [InlineData("frame", "12x148. Maybe. Ridden twice. Payment on collection.")]
    [InlineData("frame", "12x148. Not sure about that, though. I can send photos if you ask.")]
    [InlineData("frame", "Looks like 12x148, hardly used")]
    [InlineData("frame", "BB is something like BSA 68, ridden for a year")]
    [InlineData("frame", "rear like boost 12x148, never crashed")]
    [InlineData("frame", "Don't take my word for it. 12x148. Cash on collection.")]
    [InlineData("frame", "12x148. Or so the shop said. Shipping is extra.")]
    [InlineData("frame", "Not 12x148, sold cheap, no returns")]
    [InlineData("frame", "It is without 12x148 dropouts, never ridden")]
    [InlineData("frame", "12x148. Please check before you pay. No returns.")]
    [InlineData("frame", "12x148, depending on which dropouts are fitted, paint like new")]
    public void A_doubt_of_the_value_counts_wherever_it_stands_in_English(string slot, string text) => Nothing(slot, text);

    [Theory]
    [InlineData("frame", "Vendo por no usar, sin golpes. 12x148, quizás. Envío a cargo del comprador.")]
    [InlineData("frame", "Cuadro 12x148, creo. Envío incluido, pago por transferencia.")]
    [InlineData("frame", "Cuadro sin estrenar, 12x148 o 12x142, no me acuerdo, envío incluido")]
    [InlineData("frame", "12x148, no lo he medido, se vende sin garantía")]
    [InlineData("frame", "Tija 27,2 más o menos, usado un año, precio cerrado")]
    [InlineData("frame", "12x148, si no recuerdo mal, comprado hace dos años")]
    [InlineData("frame", "12x148 salvo error, precio negociable, envío a cargo del comprador")]
    [InlineData("frame", "12x148. Según el vendedor. Lo vendo por cambio de bici.")]
    [InlineData("frame", "Compruébalo antes de comprar: 12x148. Sin compromiso.")]
    [InlineData("frame", "Cuadro con adaptador para 12x148, gastos a cargo del comprador")]
    public void In_Spanish(string slot, string text) => Nothing(slot, text);

    [Theory]
    [InlineData("frame", "Verkaufe wegen Umbau. 12x148, vielleicht. Versand möglich.")]
    [InlineData("frame", "12x148, etwa, seit einer Saison gefahren")]
    [InlineData("frame", "Hinten 12x148, bin mir aber nicht sicher, Versand gegen Aufpreis möglich")]
    [InlineData("frame", "12x148, falls der Verkäufer nicht gelogen hat, keine Garantie")]
    [InlineData("frame", "12x148 wenn ich mich recht erinnere, Preis verhandelbar")]
    [InlineData("frame", "12x148. Habe ich nicht gemessen. Privatverkauf ohne Garantie.")]
    [InlineData("frame", "12x148, je nach Ausfallende, Lack wie neu")]
    [InlineData("frame", "Sattelrohr 27,2. Bitte vor dem Kauf nachmessen. Keine Rücknahme.")]
    [InlineData("frame", "Angeblich 12x148, nie montiert, Preis inklusive Versand")]
    [InlineData("frame", "nur mit Adapter 12x148, kaum gefahren, Versand inklusive")]
    public void In_German(string slot, string text) => Nothing(slot, text);

    [Theory]
    [InlineData("frame", "Très bon état, acheté il y a deux ans, 12x148 peut-être, envoi possible")]
    [InlineData("frame", "12x148, environ, peu utilisé, pas sérieux s'abstenir")]
    [InlineData("frame", "12x148 sauf erreur de ma part, envoi à la charge de l'acheteur")]
    [InlineData("frame", "Il me semble que c'est du 12x148, jamais monté")]
    [InlineData("frame", "12x148. Je n'ai pas mesuré. Paiement en espèces.")]
    [InlineData("frame", "12x148 ou 12x142, je ne sais plus, prix à débattre")]
    [InlineData("frame", "12x148. À vérifier avant l'achat. Envoi possible.")]
    [InlineData("frame", "12x148 selon le vendeur, vélo peu roulé")]
    public void In_French(string slot, string text) => Nothing(slot, text);

    [Theory]
    [InlineData("frame", "Vendo per inutilizzo. 12x148, forse. Spedizione a carico dell'acquirente.")]
    [InlineData("frame", "12x148 se non ricordo male, usato due anni, prezzo trattabile")]
    [InlineData("frame", "12x148, salvo errori, spedizione compresa")]
    [InlineData("frame", "12x148. Non l'ho misurato. Pagamento alla consegna.")]
    [InlineData("frame", "12x148, credo, mai usato, niente permute")]
    [InlineData("frame", "Da verificare prima dell'acquisto: 12x148. Niente resi.")]
    [InlineData("frame", "12x148 secondo il venditore, usato poco")]
    [InlineData("frame", "circa 27,2 il reggisella, telaio usato una stagione")]
    public void In_Italian(string slot, string text) => Nothing(slot, text);

    [Theory]
    [InlineData("frame", "Te koop wegens weinig gebruik. 12x148, misschien. Ophalen of verzenden.")]
    [InlineData("frame", "12x148, ongeveer, een seizoen gereden")]
    [InlineData("frame", "12x148 als ik het goed heb, vraagprijs honderd euro")]
    [InlineData("frame", "12x148. Niet nagemeten. Verzenden op kosten van koper.")]
    [InlineData("frame", "12x148, weet ik niet zeker, nette staat")]
    [InlineData("frame", "12x148 of 12x142, ophalen heeft de voorkeur")]
    [InlineData("frame", "12x148. Graag zelf controleren voor aankoop. Geen garantie.")]
    [InlineData("frame", "alleen met adapter 12x148, zo goed als nieuw")]
    [InlineData("frame", "afhankelijk van de uitvaleinden 12x148, lak als nieuw")]
    public void In_Dutch(string slot, string text) => Nothing(slot, text);

    private static void Nothing(string slot, string text) => Assert.Empty(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values);
}
